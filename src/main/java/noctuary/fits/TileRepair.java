package noctuary.fits;

import java.lang.reflect.Array;
import java.util.List;
import java.util.Optional;
import nom.tam.fits.FitsException;
import nom.tam.image.compression.hdu.CompressedImageHDU;

/**
 * Sets right what the library 1.21 gets wrong about quantised floats (FITS 4.0 section 10.2).
 *
 * <ul>
 *   <li>Without dithering it adds half a quantisation step to every pixel.
 *   <li>It does not know a ZBLANK card and leaves missing pixels as numbers: the mark, scaled. Writers keep the
 *       integers just above the mark free, so whatever lies within five steps of it was missing.
 * </ul>
 */
final class TileRepair {
    private static final int RESERVED_STEPS = 5;
    private static final TileRepair NOTHING = new TileRepair(new double[0], new double[0], 1, 1, 1, false);

    private final double[] missingBelow;
    private final double[] excess;
    private final int tileWidth;
    private final int tileHeight;
    private final int tileDepth;
    private final boolean zeroIsValid;

    private TileRepair(
            double[] missingBelow, double[] excess, int tileWidth, int tileHeight, int tileDepth, boolean zeroIsValid) {
        this.missingBelow = missingBelow;
        this.excess = excess;
        this.tileWidth = tileWidth;
        this.tileHeight = tileHeight;
        this.tileDepth = tileDepth;
        this.zeroIsValid = zeroIsValid;
    }

    static TileRepair of(List<Card> cards, CompressedImageHDU image) throws FitsException {
        CardIndex index = new CardIndex(cards);
        int scales = image.findColumn("ZSCALE");
        int zeros = image.findColumn("ZZERO");
        if (number(index, "ZBITPIX").orElse(0.0) > 0 || scales < 0 || zeros < 0) {
            return NOTHING;
        }
        String method = index.text("ZQUANTIZ").map(Cited::value).orElse("NO_DITHER");
        Optional<Double> blank = image.findColumn("ZBLANK") < 0 ? number(index, "ZBLANK") : Optional.empty();
        double[] scale = doubles(image.getColumn(scales));
        double[] zero = doubles(image.getColumn(zeros));
        double[] missingBelow = new double[scale.length];
        double[] excess = new double[scale.length];
        for (int i = 0; i < scale.length; i++) {
            boolean quantised = scale[i] > 0;
            missingBelow[i] = quantised && blank.isPresent()
                    ? zero[i] + scale[i] * (blank.get() + RESERVED_STEPS)
                    : Double.NEGATIVE_INFINITY;
            excess[i] = quantised && !method.startsWith("SUBTRACTIVE") ? scale[i] / 2 : 0;
        }
        int width = number(index, "ZTILE1")
                .or(() -> number(index, "ZNAXIS1"))
                .orElse(1.0)
                .intValue();
        int height = number(index, "ZTILE2").orElse(1.0).intValue();
        int depth = number(index, "ZTILE3").orElse(1.0).intValue();
        return new TileRepair(missingBelow, excess, width, height, depth, method.equals("SUBTRACTIVE_DITHER_2"));
    }

    private static double[] doubles(Object column) {
        double[] values = new double[Array.getLength(column)];
        for (int i = 0; i < values.length; i++) {
            values[i] = Array.getDouble(column, i);
        }
        return values;
    }

    private static Optional<Double> number(CardIndex index, String keyword) {
        return index.number(keyword).map(Cited::value);
    }

    /** Mends a nested array of floats or doubles, of two or three axes, in place. */
    void apply(Object array) {
        if (excess.length == 0) {
            return;
        }
        Object[] planes = (Object[]) array;
        if (!(planes[0] instanceof Object[])) {
            applyToPlane(planes, 0);
            return;
        }
        for (int k = 0; k < planes.length; k++) {
            Object[] rows = (Object[]) planes[k];
            applyToPlane(rows, k / tileDepth * tilesAcross(rows) * ((rows.length + tileHeight - 1) / tileHeight));
        }
    }

    private int tilesAcross(Object[] rows) {
        return (Array.getLength(rows[0]) + tileWidth - 1) / tileWidth;
    }

    private void applyToPlane(Object[] rows, int firstTile) {
        int across = tilesAcross(rows);
        for (int y = 0; y < rows.length; y++) {
            int tile = firstTile + y / tileHeight * across;
            int length = Array.getLength(rows[y]);
            for (int x = 0; x < length; x++) {
                mend(rows[y], x, tile + x / tileWidth);
            }
        }
    }

    private void mend(Object row, int x, int tile) {
        if (row instanceof float[] floats) {
            floats[x] = (float) mended(floats[x], tile);
        } else if (row instanceof double[] doubles) {
            doubles[x] = mended(doubles[x], tile);
        }
    }

    /** SUBTRACTIVE_DITHER_2 keeps exact zeros beside the mark. */
    private double mended(double value, int tile) {
        boolean missing = value < missingBelow[tile] && !(zeroIsValid && value == 0);
        return missing ? Double.NaN : value - excess[tile];
    }
}
