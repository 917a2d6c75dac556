package noctuary.stars;

import java.util.List;
import java.util.OptionalDouble;
import noctuary.image.Plane;

/** The level from which pixels no longer follow the light. */
final class SaturationLevel {
    private static final int STARS = 200;
    private static final int PILE = 3;

    private SaturationLevel() {}

    /**
     * The given level, else where at least three pixels in star cores pile up at the very top, else infinity. A share
     * of 0.5 % above the sky is left as a margin.
     */
    static double of(Plane plane, BackgroundMesh mesh, List<Detection> detections, OptionalDouble given) {
        double sky = mesh.level();
        double top = given.orElseGet(() -> pile(plane, sky, detections));
        return Double.isInfinite(top) ? top : top - 0.005 * Math.max(0, top - sky);
    }

    private static double pile(Plane plane, double sky, List<Detection> detections) {
        double top = Double.NEGATIVE_INFINITY;
        int count = 0;
        for (Detection d : detections.subList(0, Math.min(STARS, detections.size()))) {
            for (int y = Math.max(0, d.y() - 2); y <= Math.min(plane.height() - 1, d.y() + 2); y++) {
                for (int x = Math.max(0, d.x() - 2); x <= Math.min(plane.width() - 1, d.x() + 2); x++) {
                    double v = plane.at(x, y);
                    double same = 1e-5 * Math.abs(v - sky);
                    if (v > top + same) {
                        top = v;
                        count = 1;
                    } else if (v >= top - same) {
                        count++;
                    }
                }
            }
        }
        return count >= PILE ? top : Double.POSITIVE_INFINITY;
    }
}
