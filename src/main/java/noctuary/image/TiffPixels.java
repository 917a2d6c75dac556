package noctuary.image;

import java.io.IOException;
import java.util.Optional;

/** Turns samples of TIFF into grey or red, green and blue, and stores them. */
final class TiffPixels {
    private static final int BYTE_WHITE = 255;
    private static final float LONG_WHITE = 4294967295f;
    private static final int MOST_PROFILE = 1 << 24;

    private final TiffLayout layout;
    private final PictureStore store;
    private final int[][] palette;
    private final Optional<Inks> inks;
    private final int planes;

    private TiffPixels(TiffLayout layout, PictureStore store, int[][] palette, Optional<Inks> inks, int planes) {
        this.layout = layout;
        this.store = store;
        this.palette = palette;
        this.inks = inks;
        this.planes = planes;
    }

    static TiffPixels of(TiffDirectory tags, TiffLayout layout) throws IOException, UnreadablePictureException {
        TiffColours colours = layout.colours();
        int[][] palette = colours == TiffColours.PALETTE ? TiffPalette.of(tags, layout.bits()) : new int[0][];
        int planes = colours == TiffColours.PALETTE ? palette.length : colours.samples() == 1 ? 1 : 3;
        Optional<Inks> inks = colours == TiffColours.INKS
                ? Optional.of(Inks.of(tags.raw(34675, MOST_PROFILE), layout.bits()))
                : Optional.empty();
        Upright upright = Upright.of(Exif.orientation(tags), layout.width(), layout.height());
        int bits = colours == TiffColours.PALETTE ? Byte.SIZE : layout.storedBits();
        return new TiffPixels(layout, PictureStore.of(upright, planes, bits), palette, inks, planes);
    }

    /** Whether only one thread may put pixels. */
    boolean oneAtATime() {
        return inks.isPresent();
    }

    /** @param row one or more samples a pixel; changed here */
    void put(Run run, int[] row) {
        if (palette.length > 0) {
            putIndexed(run, row);
            return;
        }
        if (layout.multiplied()) {
            divideByAlpha(row);
        }
        if (layout.bits() < Byte.SIZE || layout.colours() == TiffColours.WHITE_IS_ZERO) {
            toFullScale(row);
        }
        inks.ifPresent(i -> i.toRgb(row, layout.samples(), run.count()));
        for (int p = 0; p < planes; p++) {
            store.put(run, p, row, p, layout.samples());
        }
    }

    private void putIndexed(Run run, int[] row) {
        int apart = layout.samples();
        int[] looked = new int[run.count()];
        for (int p = 0; p < planes; p++) {
            for (int i = 0; i < looked.length; i++) {
                looked[i] = palette[p][row[i * apart]];
            }
            store.put(run, p, looked, 0, 1);
        }
    }

    /** Fewer than eight bits are spread over all of 0 to 255; white that was stored as zero is turned over. */
    private void toFullScale(int[] row) {
        boolean turned = layout.colours() == TiffColours.WHITE_IS_ZERO;
        if (layout.storedBits() == Float.SIZE) {
            for (int i = 0; turned && i < row.length; i++) {
                row[i] = Float.floatToRawIntBits(LONG_WHITE - Float.intBitsToFloat(row[i]));
            }
            return;
        }
        int white = (1 << layout.bits()) - 1;
        int scale = white < BYTE_WHITE ? BYTE_WHITE / white : 1;
        for (int i = 0; i < row.length; i++) {
            row[i] = (turned ? white - row[i] : row[i]) * scale;
        }
    }

    private void divideByAlpha(int[] row) {
        int apart = layout.samples();
        boolean floats = layout.storedBits() == Float.SIZE;
        int white = layout.bits() >= Float.SIZE ? 0 : (1 << layout.bits()) - 1;
        for (int i = layout.alphaAt(); i < row.length; i += apart) {
            for (int p = i - layout.alphaAt(); p < i; p++) {
                row[p] = floats ? floatQuotient(row[p], row[i]) : quotient(row[p], row[i], white);
            }
        }
    }

    private static int quotient(int value, int alpha, int white) {
        return alpha == 0 ? 0 : (int) Math.min(white, Math.round((double) value * white / alpha));
    }

    private int floatQuotient(int value, int alpha) {
        float opacity = Float.intBitsToFloat(alpha) / (layout.floating() ? 1 : LONG_WHITE);
        return opacity > 0 ? Float.floatToRawIntBits(Float.intBitsToFloat(value) / opacity) : 0;
    }

    PictureImage toPicture() {
        boolean whole = layout.bits() == Float.SIZE && !layout.floating();
        return store.toPicture(
                layout.alphaAt() >= 0, whole ? Optional.of(LONG_WHITE) : Optional.empty(), inks.map(Inks::sentence));
    }
}
