package noctuary.noise;

import java.util.stream.IntStream;

/** Strips of eight rows of one phase, spread evenly over the frame, with that phase's pixels side by side. */
record Strips(float[][][] strips) {
    static final int HEIGHT = 8;
    private static final int MOST_STRIPS = 32;

    /** @param phaseX of the first column that counts; the first row that counts is 0 */
    static Strips of(FramePixels pixels, int stride, int phaseX) {
        int rows = pixels.height() / stride;
        int strips = Math.min(MOST_STRIPS, rows / HEIGHT);
        int height = strips == 0 ? rows : HEIGHT;
        return new Strips(IntStream.range(0, Math.max(1, strips))
                .parallel()
                .mapToObj(i -> strip(pixels, stride, phaseX, first(i, strips, rows), height))
                .toArray(float[][][]::new));
    }

    private static int first(int strip, int strips, int rows) {
        return strips < 2 ? 0 : (int) ((long) strip * (rows - HEIGHT) / (strips - 1));
    }

    private static float[][] strip(FramePixels pixels, int stride, int phaseX, int first, int height) {
        float[] line = new float[pixels.width()];
        float[][] strip = new float[height][pixels.width() / stride];
        for (int row = 0; row < height; row++) {
            pixels.copyRow((first + row) * stride, line);
            for (int x = 0; x < strip[row].length; x++) {
                strip[row][x] = line[x * stride + phaseX];
            }
        }
        return strip;
    }

    /** Every {@code step}-th row of every strip. */
    float[][] rows(int step) {
        return IntStream.range(0, strips.length)
                .boxed()
                .flatMap(i -> IntStream.range(0, strips[i].length)
                        .filter(row -> row % step == 0)
                        .mapToObj(row -> strips[i][row]))
                .toArray(float[][]::new);
    }

    /** Three successive rows of every strip; none when the frame is lower than that. */
    float[][][] triples() {
        return IntStream.range(0, strips.length)
                .filter(i -> strips[i].length >= 3)
                .mapToObj(i -> new float[][] {strips[i][0], strips[i][1], strips[i][2]})
                .toArray(float[][][]::new);
    }
}
