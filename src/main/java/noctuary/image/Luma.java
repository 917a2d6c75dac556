package noctuary.image;

/** Brightness and two differences of colour to red, green and blue (JFIF 1.02; ITU-R BT.601), 8 bits each. */
final class Luma {
    private Luma() {}

    /** @param bands samples a pixel; the first three are turned, in place */
    static void toRgb(int[] row, int bands) {
        for (int i = 0; i + 2 < row.length; i += bands) {
            int y = row[i];
            int blue = row[i + 1] - 128;
            int red = row[i + 2] - 128;
            row[i] = clamped(y + 1.402 * red);
            row[i + 1] = clamped(y - 0.344136 * blue - 0.714136 * red);
            row[i + 2] = clamped(y + 1.772 * blue);
        }
    }

    private static int clamped(double value) {
        return (int) Math.max(0, Math.min(255, Math.round(value)));
    }
}
