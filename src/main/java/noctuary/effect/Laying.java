package noctuary.effect;

import java.util.List;
import java.util.Optional;
import noctuary.match.Alignment;
import noctuary.match.Match;
import noctuary.stars.Star;

/**
 * How a picture lies on its origin, by the stars alone.
 *
 * @param alignment from the origin to the picture
 * @param pairs of the same star: from in the origin's list, to in the picture's
 * @param way from the picture's pixels to the origin's
 */
record Laying(Alignment alignment, List<Match.Pair> pairs, Way way) {
    /** Farthest that a corner may be off when the grids are taken for the same, pixels. */
    private static final double SAME_GRID_PX = 0.35;

    /**
     * x' = xx x + xy y + x0, y' likewise.
     *
     * @param whole whether whole pixels fall on whole pixels, so that nothing needs resampling
     */
    record Way(double xx, double xy, double x0, double yx, double yy, double y0, boolean whole) {
        double x(double x, double y) {
            return xx * x + xy * y + x0;
        }

        double y(double x, double y) {
            return yx * x + yy * y + y0;
        }
    }

    /** Nothing where the stars do not agree. */
    static Optional<Laying> find(Side origin, Side picture) {
        return Match.find(origin.stars(), picture.stars()).map(match -> {
            Way exact = way(match.alignment().inverse());
            Way snapped = snapped(exact, picture.width(), picture.height());
            boolean same = farthest(exact, snapped, picture.width(), picture.height()) < SAME_GRID_PX;
            return new Laying(match.alignment(), match.pairs(), same ? snapped : exact);
        });
    }

    private static Way way(Alignment back) {
        double[] zero = back.apply(0, 0);
        double[] right = back.apply(1, 0);
        double[] up = back.apply(0, 1);
        return new Way(
                right[0] - zero[0], up[0] - zero[0], zero[0], right[1] - zero[1], up[1] - zero[1], zero[1], false);
    }

    /** The nearest way that leads from whole pixels to whole pixels, true in the middle of the picture. */
    private static Way snapped(Way way, int width, int height) {
        double xx = Math.rint(way.xx());
        double xy = Math.rint(way.xy());
        double yx = Math.rint(way.yx());
        double yy = Math.rint(way.yy());
        double cx = width / 2;
        double cy = height / 2;
        return new Way(
                xx,
                xy,
                Math.rint(way.x(cx, cy) - xx * cx - xy * cy),
                yx,
                yy,
                Math.rint(way.y(cx, cy) - yx * cx - yy * cy),
                true);
    }

    private static double farthest(Way a, Way b, int width, int height) {
        double most = 0;
        for (int corner = 0; corner < 4; corner++) {
            double x = corner % 2 * (width - 1);
            double y = corner / 2 * (height - 1);
            most = Math.max(most, Math.hypot(a.x(x, y) - b.x(x, y), a.y(x, y) - b.y(x, y)));
        }
        return most;
    }

    /** Where a star of the origin stands in the picture: {x, y}. */
    double[] onPicture(Star star) {
        return alignment.apply(star.x(), star.y());
    }

    double[] onOrigin(double x, double y) {
        return new double[] {way.x(x, y), way.y(x, y)};
    }

    /** Pixels of the picture per pixel of the origin. */
    double scale() {
        return alignment.scale();
    }
}
