package noctuary.advice;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import noctuary.stars.FieldModel;
import noctuary.stats.Robust;

/**
 * How stars widen away from the middle of the field, medians over the frames.
 *
 * @param stars in all frames
 * @param risePx from the middle to a corner, the part that is the same in all directions
 * @param tiltPx change over the length of the diagonal, in the direction in which width grows fastest
 * @param tiltDirectionDeg from +x towards +y
 */
record Corners(
        int stars,
        double centrePx,
        double risePx,
        double riseErrorPx,
        double tiltPx,
        double tiltErrorPx,
        double tiltDirectionDeg) {
    /** Fewer stars cannot carry the six terms of the surface. */
    private static final int FEWEST_STARS = 40;

    static Optional<Corners> of(List<FieldModel> models) {
        List<FieldModel> whole = models.stream()
                .filter(m -> Double.isFinite(m.curvaturePx()) && Double.isFinite(m.tiltPx()))
                .toList();
        int stars = whole.stream().mapToInt(FieldModel::stars).sum();
        if (whole.isEmpty() || stars < FEWEST_STARS) {
            return Optional.empty();
        }
        double x = median(whole, m -> part(m, Math::cos));
        double y = median(whole, m -> part(m, Math::sin));
        return Optional.of(new Corners(
                stars,
                median(whole, FieldModel::centreFwhmPx),
                median(whole, FieldModel::curvaturePx),
                error(whole, FieldModel::curvatureErrorPx),
                Math.hypot(x, y),
                error(whole, FieldModel::tiltErrorPx),
                Math.toDegrees(Math.atan2(y, x))));
    }

    /** Nothing where a frame's tilt is too slight to have a direction. */
    private static double part(FieldModel m, DoubleUnaryOperator along) {
        return Double.isNaN(m.tiltDirectionDeg())
                ? 0
                : m.tiltPx() * along.applyAsDouble(Math.toRadians(m.tiltDirectionDeg()));
    }

    private static double median(List<FieldModel> models, ToDoubleFunction<FieldModel> part) {
        return Robust.median(models.stream().mapToDouble(part).toArray());
    }

    /** Of the median over the frames, each with an error of its own. */
    private static double error(List<FieldModel> models, ToDoubleFunction<FieldModel> part) {
        double medianOverMean = models.size() > 2 ? Math.sqrt(Math.PI / 2) : 1;
        return medianOverMean * median(models, part) / Math.sqrt(models.size());
    }
}
