package noctuary.image;

/**
 * One plane of physical pixel values, kept as 16-bit stored values with a linear scale where the source had them, else
 * as floats. NaN marks a missing pixel. Never changes after it is made.
 */
public final class Plane {
    private final int width;
    private final int height;
    private final float[] floats;
    private final short[] shorts;
    private final float zero;
    private final float scale;

    private Plane(int width, int height, float[] floats, short[] shorts, float zero, float scale) {
        int length = floats != null ? floats.length : shorts.length;
        if (width < 1 || height < 1 || (long) width * height != length) {
            throw new IllegalArgumentException(width + " x " + height + " pixels do not fill " + length + " values");
        }
        this.width = width;
        this.height = height;
        this.floats = floats;
        this.shorts = shorts;
        this.zero = zero;
        this.scale = scale;
    }

    /** A plane of floats, row after row; the array is taken over, not copied. */
    public static Plane of(int width, int height, float[] pixels) {
        return new Plane(width, height, pixels, null, 0, 1);
    }

    /** A plane of {@code zero + scale * stored}, row after row; the array is taken over, not copied. */
    public static Plane ofStored(int width, int height, short[] stored, float zero, float scale) {
        return new Plane(width, height, null, stored, zero, scale);
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** The value at column x, row y; NaN where missing. */
    public float at(int x, int y) {
        if (x < 0 || x >= width) {
            throw new IndexOutOfBoundsException("column " + x + " of " + width);
        }
        int i = y * width + x;
        return floats != null ? floats[i] : zero + scale * shorts[i];
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
        for (int i = 0; i < length; i++) {
            into[offset + i] = zero + scale * shorts[from + i];
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
