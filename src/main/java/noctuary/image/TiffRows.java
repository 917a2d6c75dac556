package noctuary.image;

/**
 * Turns rows of samples that were stored as differences back (TIFF 6.0, section 14, and technical note 3), and half
 * floats into floats.
 */
final class TiffRows {
    private final TiffLayout layout;

    TiffRows(TiffLayout layout) throws UnreadablePictureException {
        this.layout = layout;
        boolean strange = layout.predictor() == 3 && (layout.tileWidth() > 0 || layout.format() != TiffLayout.FLOATING);
        boolean wide = layout.bits() != 16 && layout.bits() != 32 && layout.bits() > 8;
        if (wide || layout.foretold() && (layout.whiteIsZero() || strange)) {
            throw new UnreadablePictureException(
                    wide
                            ? "the picture has " + layout.bits() + " bits a sample"
                            : "the picture is compressed in a way that cannot be read here",
                    "save it with 16 or 32 bits a sample, uncompressed");
        }
    }

    /** Whether the values are floating point though the raster holds whole numbers. */
    boolean hiddenFloats() {
        return layout.halfFloats() || layout.foretold() && layout.format() == TiffLayout.FLOATING;
    }

    /** Undoes the predictor of one row in place; pixel after pixel, {@code bands} samples each. */
    void restore(int[] row, int bands) {
        if (!layout.foretold()) {
            return;
        }
        if (layout.predictor() == 2) {
            addUp(row, bands);
        } else if (layout.planar()) {
            for (int p = 0; p < bands; p++) {
                gather(row, p, bands, 1);
            }
        } else {
            gather(row, 0, 1, bands);
        }
    }

    /** Every sample was stored as its distance from the same colour of the pixel before, within its tile. */
    private void addUp(int[] row, int bands) {
        int mask = layout.bits() == 16 ? 0xFFFF : -1;
        int tile = layout.tileWidth() > 0 ? layout.tileWidth() * bands : Integer.MAX_VALUE;
        for (int i = bands; i < row.length; i++) {
            if (i % tile >= bands) {
                row[i] = row[i] + row[i - bands] & mask;
            }
        }
    }

    /**
     * The bytes of a row were sorted by their weight, heaviest first, and stored as distances.
     *
     * @param from first sample of the row; then every {@code step}th
     * @param stride samples between those whose bytes were compared
     */
    private void gather(int[] row, int from, int step, int stride) {
        int size = layout.bits() / 8;
        int count = row.length / step;
        byte[] bytes = new byte[count * size];
        for (int i = 0; i < bytes.length; i++) {
            int within = layout.littleEndian() ? i % size : size - 1 - i % size;
            bytes[i] = (byte) (row[from + i / size * step] >> 8 * within);
        }
        for (int i = stride; i < bytes.length; i++) {
            bytes[i] += bytes[i - stride];
        }
        for (int i = 0; i < count; i++) {
            int value = 0;
            for (int b = 0; b < size; b++) {
                value = value << 8 | bytes[b * count + i] & 255;
            }
            row[from + i * step] = value;
        }
    }

    float floating(int sample) {
        return layout.bits() == 16 ? half(sample) : Float.intBitsToFloat(sample);
    }

    /** IEEE 754 binary16. */
    static float half(int bits) {
        int exponent = bits >> 10 & 31;
        int fraction = bits & 1023;
        float sign = (bits & 0x8000) == 0 ? 1 : -1;
        if (exponent == 31) {
            return fraction == 0 ? sign * Float.POSITIVE_INFINITY : Float.NaN;
        }
        return sign * (exponent == 0 ? fraction * 0x1p-24f : Math.scalb(1024f + fraction, exponent - 25));
    }
}
