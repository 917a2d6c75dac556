package noctuary.image;

import java.io.IOException;
import java.nio.ByteOrder;

/**
 * What a directory of a TIFF file says about its pixels (TIFF 6.0, sections 3 to 22).
 *
 * @param bits a sample
 * @param floating whether samples are floating point
 * @param planar whether every colour is stored by itself
 * @param predictor 1 none, 2 differences along the row, 3 differences of the bytes of floating point numbers
 * @param blockWidth of a tile, or of the whole picture when stored in strips
 * @param alphaAt sample of a pixel that is its opacity; -1 without
 * @param multiplied whether colours are stored multiplied by it
 */
record TiffLayout(
        int width,
        int height,
        ByteOrder order,
        int samples,
        int bits,
        boolean floating,
        TiffColours colours,
        boolean planar,
        TiffCompression compression,
        int predictor,
        boolean lightestBitFirst,
        int blockWidth,
        int blockHeight,
        int alphaAt,
        boolean multiplied) {
    private static final int WHOLE = 1;
    private static final int FLOATING = 3;
    private static final int UNDEFINED = 4;
    private static final int MOST_SAMPLES = 64;
    private static final int WIDEST_TILE = 1 << 16;

    static TiffLayout of(TiffDirectory tags) throws IOException, UnreadablePictureException {
        int width = side(tags.number(256, 0));
        int height = side(tags.number(257, 0));
        PictureFile.requireSize(width, height);
        int samples = side(tags.number(277, 1));
        if (samples < 1 || samples > MOST_SAMPLES) {
            throw PictureFile.damaged("it claims " + samples + " samples a pixel");
        }
        TiffColours colours = TiffColours.of(tags.number(262, samples > 2 ? 2 : 1), samples, tags.number(332, 1));
        boolean tiled = tags.has(322);
        int extra = (int) (samples > colours.samples() ? tags.number(338, 0) : 0);
        TiffLayout layout = new TiffLayout(
                width,
                height,
                tags.order(),
                samples,
                bits(tags.numbers(258, samples)),
                floating(tags.number(339, WHOLE)),
                colours,
                tags.number(284, 1) == 2 && samples > 1,
                TiffCompression.of(tags.number(259, 1)),
                (int) tags.number(317, 1),
                tags.number(266, 1) == 2,
                tiled ? side(tags.number(322, 0)) : width,
                (int) Math.min(height, tiled ? tags.number(323, 0) : tags.number(278, height)),
                extra == 1 || extra == 2 ? colours.samples() : -1,
                extra == 1);
        TiffLimits.require(layout);
        return layout;
    }

    private static int side(long claimed) {
        return (int) Math.max(0, Math.min(Integer.MAX_VALUE, claimed));
    }

    private static int bits(long[] bits) throws UnreadablePictureException {
        for (long each : bits) {
            if (each != bits[0]) {
                throw new UnreadablePictureException(
                        "the picture has colours of different depth", "save it with 8 or 16 bits a sample");
            }
        }
        return bits.length == 0 ? 1 : side(bits[0]);
    }

    private static boolean floating(long format) throws UnreadablePictureException {
        if (format != WHOLE && format != FLOATING && format != UNDEFINED) {
            throw new UnreadablePictureException(
                    "the picture holds " + (format == 2 ? "signed" : "complex") + " numbers",
                    "save it with unsigned whole numbers or floating point");
        }
        return format == FLOATING;
    }

    /** Bits of the store that keeps a sample. */
    int storedBits() {
        return floating || bits > 16 ? 32 : bits > 8 ? 16 : 8;
    }

    int blocksAcross() {
        return (width + blockWidth - 1) / blockWidth;
    }

    int blocksDown() {
        return (height + blockHeight - 1) / blockHeight;
    }

    /** Stretches of the file that one block consists of. */
    int sheets() {
        return planar ? samples : 1;
    }

    /** Samples of a pixel within one stretch. */
    int bands() {
        return planar ? 1 : samples;
    }

    long rowBytes() {
        return ((long) blockWidth * bands() * bits + 7) / 8;
    }

    boolean saneBlocks() {
        return blockWidth > 0 && blockHeight > 0 && blockWidth <= Math.max(width, WIDEST_TILE);
    }
}
