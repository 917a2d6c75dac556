package noctuary.image;

/**
 * The pixels of a plane that a block of the result needs, its edges repeated outward so that every kernel finds its
 * pixels.
 *
 * @param fromX column of the plane at which the cut-out begins; may lie outside
 * @param planeWidth of the whole plane
 */
record SourceCut(float[] pixels, int fromX, int fromY, int width, int height, int planeWidth, int planeHeight) {

    /**
     * @param block left, top, right and bottom of the result, the latter two not included
     * @param reach pixels around
     * @return null where the block lies beside the plane
     */
    static SourceCut under(Plane plane, Affine map, int[] block, double reach) {
        double[] xs = new double[4];
        double[] ys = new double[4];
        for (int i = 0; i < 4; i++) {
            double x = i % 2 == 0 ? block[0] : block[2] - 1;
            double y = i < 2 ? block[1] : block[3] - 1;
            xs[i] = map.x(x, y);
            ys[i] = map.y(x, y);
        }
        int fromX = first(xs, reach, plane.width());
        int fromY = first(ys, reach, plane.height());
        int toX = last(xs, reach, plane.width());
        int toY = last(ys, reach, plane.height());
        int pad = (int) Math.ceil(reach);
        boolean beside = toX < 0 || toY < 0 || fromX >= plane.width() || fromY >= plane.height();
        return beside
                ? null
                : cut(plane, fromX - pad, fromY - pad, toX - fromX + 1 + 2 * pad, toY - fromY + 1 + 2 * pad);
    }

    private static int first(double[] values, double reach, int size) {
        double low = Math.min(Math.min(values[0], values[1]), Math.min(values[2], values[3]));
        return (int) Math.floor(Math.max(-reach, Math.min(size + reach, low)));
    }

    private static int last(double[] values, double reach, int size) {
        double high = Math.max(Math.max(values[0], values[1]), Math.max(values[2], values[3]));
        return (int) Math.ceil(Math.max(-reach, Math.min(size + reach, high)));
    }

    private static SourceCut cut(Plane plane, int fromX, int fromY, int width, int height) {
        float[] pixels = new float[width * height];
        int left = Math.max(0, fromX);
        int right = Math.min(plane.width(), fromX + width);
        for (int row = 0; row < height; row++) {
            int y = Math.max(0, Math.min(plane.height() - 1, fromY + row));
            int at = row * width;
            if (right > left) {
                plane.copyRow(left, y, right - left, pixels, at + left - fromX);
            }
            for (int x = 0; x < width; x++) {
                int inside = Math.max(0, Math.min(plane.width() - 1, fromX + x));
                if (inside != fromX + x) {
                    pixels[at + x] = plane.at(inside, y);
                }
            }
        }
        return new SourceCut(pixels, fromX, fromY, width, height, plane.width(), plane.height());
    }
}
