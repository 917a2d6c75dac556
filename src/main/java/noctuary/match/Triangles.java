package noctuary.match;

import java.util.Arrays;

/**
 * Triangles of neighbouring stars and their shapes. Sides a ≥ b ≥ c; a shape is the point (b/a, c/a), the same under
 * any similarity (Valdes et al. 1995, PASP 107, 1119), and the sense of rotation, which a mirror turns.
 *
 * <p>Neighbours are sought among the brightest 12, 25, 50, ... stars in turn: wherever two lists differ in depth or
 * field, some of these subsets are of the same density on the sky.
 */
final class Triangles {
    /** Triangles with sides less different than this are passed over: noise would swap the sides. */
    private static final double LEAST_DIFFERENCE = 0.02;
    /** Nor flat ones, whose sense of rotation is unsure. */
    private static final double LEAST_FLATNESS = 0.03;
    /** Nor those with one side short against the others: Groth 1986 (AJ 91, 1244) leaves out ratios above 10. */
    private static final double SHORTEST_SIDE = 0.1;
    /** Error of a position that shapes must bear, pixels. */
    private static final double POSITION_ERROR_PX = 0.4;
    /** Larger errors of shape fit too many triangles to be of use. */
    private static final double LARGEST_SHAPE_ERROR = 0.02;

    private static final int FEWEST = 12;
    private static final int NEIGHBOURS = 8;

    /** Ranks of the corners opposite a, b and c, three entries a triangle. */
    final int[] corners;

    final float[] ratioB;
    final float[] ratioC;
    /** How far each ratio may be off. */
    final float[] error;

    final boolean[] counterClockwise;

    private int size;

    private Triangles(int capacity) {
        corners = new int[3 * capacity];
        ratioB = new float[capacity];
        ratioC = new float[capacity];
        error = new float[capacity];
        counterClockwise = new boolean[capacity];
    }

    static Triangles of(Points points, int depth) {
        int deepest = Math.min(depth, points.size());
        Triples triples = new Triples();
        for (int count = Math.min(FEWEST, deepest); ; count = Math.min(2 * count + 1, deepest)) {
            triples.addNeighbours(points, count, count <= 2 * NEIGHBOURS ? count - 1 : NEIGHBOURS);
            if (count == deepest) {
                break;
            }
        }
        long[] distinct = triples.distinct();
        Triangles triangles = new Triangles(distinct.length);
        Arrays.stream(distinct)
                .forEach(t -> triangles.add(points, Triples.first(t), Triples.second(t), Triples.third(t)));
        return triangles;
    }

    int size() {
        return size;
    }

    private void add(Points p, int i, int j, int k) {
        double oppositeI = Math.hypot(p.x[j] - p.x[k], p.y[j] - p.y[k]);
        double oppositeJ = Math.hypot(p.x[i] - p.x[k], p.y[i] - p.y[k]);
        double oppositeK = Math.hypot(p.x[i] - p.x[j], p.y[i] - p.y[j]);
        if (oppositeI < oppositeJ) {
            add(p, j, i, k, oppositeJ, oppositeI, oppositeK);
        } else {
            add(p, i, j, k, oppositeI, oppositeJ, oppositeK);
        }
    }

    /** Corners with their opposite sides, of which the first is not below the second. */
    private void add(Points p, int i, int j, int k, double sideI, double sideJ, double sideK) {
        if (sideK <= sideJ) {
            sorted(p, i, j, k, sideI, sideJ, sideK);
        } else if (sideK <= sideI) {
            sorted(p, i, k, j, sideI, sideK, sideJ);
        } else {
            sorted(p, k, i, j, sideK, sideI, sideJ);
        }
    }

    private void sorted(Points p, int i, int j, int k, double a, double b, double c) {
        double doubleArea = (p.x[j] - p.x[i]) * (p.y[k] - p.y[i]) - (p.x[k] - p.x[i]) * (p.y[j] - p.y[i]);
        boolean distinct = c > SHORTEST_SIDE * a
                && a - b > LEAST_DIFFERENCE * a
                && b - c > LEAST_DIFFERENCE * a
                && Math.abs(doubleArea) > LEAST_FLATNESS * a * a;
        double shapeError = 2 * POSITION_ERROR_PX / a;
        if (!distinct || shapeError > LARGEST_SHAPE_ERROR) {
            return;
        }
        corners[3 * size] = i;
        corners[3 * size + 1] = j;
        corners[3 * size + 2] = k;
        ratioB[size] = (float) (b / a);
        ratioC[size] = (float) (c / a);
        error[size] = (float) shapeError;
        counterClockwise[size] = doubleArea > 0;
        size++;
    }
}
