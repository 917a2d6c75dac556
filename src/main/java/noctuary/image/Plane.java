package noctuary.image;

/**
 * One plane of physical pixel values, kept as 16-bit stored values with a linear scale, or as bytes, where the source had
 * them, else as floats. NaN marks a missing pixel. Never changes after it is made.
 */
public final class Plane {
    private final int width;
    private final int height;
    private final float[] floats;
    private final short[] shorts;
    private final byte[] bytes;
    private final float zero;
    private final float scale;
    /** Physical value of every stored one: looking up is at least as quick as converting, and much quicker at first. */
    private final float[] physical;

    private Plane(int width, int height, float[] floats, short[] shorts, byte[] bytes, float zero, float scale) {
        int length = floats != null ? floats.length : shorts != null ? shorts.length : bytes.length;
        if (width < 1 || height < 1 || (long) width * height != length) {
            throw new IllegalArgumentException(width + " x " + height + " pixels do not fill " + length + " values");
        }
        this.width = width;
        this.height = height;
        this.floats = floats;
        this.shorts = shorts;
        this.bytes = bytes;
        this.zero = zero;
        this.scale = scale;
        this.physical = shorts == null ? null : physical(zero, scale);
    }

    private static float[] physical(float zero, float scale) {
        float[] values = new float[1 << Short.SIZE];
        for (int i = 0; i < values.length; i++) {
            values[i] = zero + scale * (short) i;
        }
        return values;
    }

    /** A plane of floats, row after row; the array is taken over, not copied. */
    public static Plane of(int width, int height, float[] pixels) {
        return new Plane(width, height, pixels, null, null, 0, 1);
    }

    /** A plane of {@code zero + scale * stored}, row after row; the array is taken over, not copied. */
    public static Plane ofStored(int width, int height, short[] stored, float zero, float scale) {
        return new Plane(width, height, null, stored, null, zero, scale);
    }

    /** A plane of whole numbers from 0 to 255, row after row; the array is taken over, not copied. */
    public static Plane ofBytes(int width, int height, byte[] stored) {
        return new Plane(width, height, null, null, stored, 0, 1);
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** False when every pixel is sure to hold a finite value. */
    public boolean mayLack() {
        return floats != null
                || shorts != null && !(Float.isFinite(physical[1 << 15]) && Float.isFinite(physical[(1 << 15) - 1]));
    }

    /** The value at column x, row y; NaN where missing. */
    public float at(int x, int y) {
        if (x < 0 || x >= width) {
            throw new IndexOutOfBoundsException("column " + x + " of " + width);
        }
        int i = y * width + x;
        return floats != null ? floats[i] : shorts != null ? physical[shorts[i] & 0xffff] : bytes[i] & 255;
    }

    /** Copies {@code length} values of row {@code y} from column {@code x} on into {@code into} at {@code offset}. */
    public void copyRow(int x, int y, int length, float[] into, int offset) {
        if (x < 0 || x + length > width) {
            throw new IndexOutOfBoundsException("columns " + x + " to " + (x + length) + " of " + width);
        }
        int from = y * width + x;
        if (floats != null) {
            System.arraycopy(floats, from, into, offset, length);
            return;
        }
        if (shorts == null) {
            for (int i = 0; i < length; i++) {
                into[offset + i] = bytes[from + i] & 255;
            }
            return;
        }
        for (int i = 0; i < length; i++) {
            into[offset + i] = physical[shorts[from + i] & 0xffff];
        }
    }

    /**
     * Means of 2 x 2 pixels: {@code length} of them from (2x, 2y) on into {@code into} at {@code offset}; NaN where one of
     * the four is missing.
     */
    public void copyHalved(int x, int y, int length, float[] into, int offset) {
        if (x < 0 || 2 * (x + length) > width) {
            throw new IndexOutOfBoundsException("pairs " + x + " to " + (x + length) + " of " + width / 2);
        }
        int upper = 2 * y * width + 2 * x;
        if (floats != null) {
            halve(floats, upper, upper + width, length, into, offset);
            return;
        }
        if (shorts == null) {
            halve(bytes, upper, upper + width, length, into, offset);
            return;
        }
        float quarter = scale / 4;
        for (int i = 0, a = upper, b = upper + width; i < length; i++, a += 2, b += 2) {
            into[offset + i] = zero + quarter * (shorts[a] + shorts[a + 1] + shorts[b] + shorts[b + 1]);
        }
    }

    private static void halve(float[] pixels, int upper, int lower, int length, float[] into, int offset) {
        for (int i = 0, a = upper, b = lower; i < length; i++, a += 2, b += 2) {
            into[offset + i] = 0.25f * (pixels[a] + pixels[a + 1] + (pixels[b] + pixels[b + 1]));
        }
    }

    private static void halve(byte[] pixels, int upper, int lower, int length, float[] into, int offset) {
        for (int i = 0, a = upper, b = lower; i < length; i++, a += 2, b += 2) {
            into[offset + i] =
                    0.25f * ((pixels[a] & 255) + (pixels[a + 1] & 255) + (pixels[b] & 255) + (pixels[b + 1] & 255));
        }
    }

    /** The cut-out from (x, y) on, of the given size, as floats. */
    public Plane cut(int x, int y, int cutWidth, int cutHeight) {
        float[] pixels = new float[cutWidth * cutHeight];
        for (int row = 0; row < cutHeight; row++) {
            copyRow(x, y + row, cutWidth, pixels, row * cutWidth);
        }
        return of(cutWidth, cutHeight, pixels);
    }
}
