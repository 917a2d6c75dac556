package noctuary.match;

import java.util.stream.IntStream;

/**
 * The part of the sky that both lists show under a transform.
 *
 * @param a brightest stars of the first list there
 * @param b brightest stars of the second list there
 * @param area in square pixels of the second list
 */
record Overlap(Points a, Points b, double area) {
    private static final int BRIGHTEST = 150;
    private static final int SAMPLES = 24;

    static Overlap of(Points a, Points b, Similarity s) {
        Similarity back = s.inverse();
        int[] inB = inside(a, b, s);
        int[] inA = inside(b, a, back);
        return new Overlap(a.at(inB), b.at(inA), share(a, b, s) * a.area() * s.scale() * s.scale());
    }

    int fewestStars() {
        return Math.min(a.size(), b.size());
    }

    private static int[] inside(Points points, Points frame, Similarity s) {
        return IntStream.range(0, points.size())
                .filter(i -> frame.encloses(s.toX(points.x[i], points.y[i]), s.toY(points.x[i], points.y[i]), 1))
                .limit(BRIGHTEST)
                .toArray();
    }

    /** Share of the first field that lies in the second, from a grid of places. */
    private static double share(Points a, Points b, Similarity s) {
        int inside = 0;
        for (int row = 0; row < SAMPLES; row++) {
            for (int column = 0; column < SAMPLES; column++) {
                double x = a.minX + (a.maxX - a.minX) * (column + 0.5) / SAMPLES;
                double y = a.minY + (a.maxY - a.minY) * (row + 0.5) / SAMPLES;
                inside += b.encloses(s.toX(x, y), s.toY(x, y), 0) ? 1 : 0;
            }
        }
        return inside / (double) (SAMPLES * SAMPLES);
    }
}
