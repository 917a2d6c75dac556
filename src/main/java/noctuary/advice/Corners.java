package noctuary.advice;

import java.util.List;
import java.util.Optional;
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
 * @param oneWayPx how much more they widen along one axis, both ways, than across it: a tilt whose middle is in focus
 * @param oneWayDirectionDeg of that axis, -90 to 90
 */
record Corners(
        int stars,
        double centrePx,
        double risePx,
        double riseErrorPx,
        double tiltPx,
        double tiltErrorPx,
        double tiltDirectionDeg,
        double oneWayPx,
        double oneWayErrorPx,
        double oneWayDirectionDeg) {
    /** Errors that a term must be away from nothing. */
    private static final double LEAST_ERRORS = 4;

    /** A blur that grows straight bends widths a little across its axis too. */
    private static final double LEAST_BESIDE = 0.5;
    /** Of the rise, that one axis must have more; a tilt about the middle alone has twice the rise. */
    private static final double LEAST_SHARE = 0.2;
    /** Fewer stars cannot carry the seven terms of the surface. */
    private static final int FEWEST_STARS = 40;

    static Optional<Corners> of(List<FieldModel> models) {
        List<FieldModel> whole = models.stream()
                .filter(m -> Double.isFinite(m.curvaturePx()) && Double.isFinite(m.tiltPx()))
                .toList();
        int stars = whole.stream().mapToInt(FieldModel::stars).sum();
        if (whole.isEmpty() || stars < FEWEST_STARS) {
            return Optional.empty();
        }
        double[] tilt = mean(whole, FieldModel::tiltPx, FieldModel::tiltDirectionDeg);
        double[] oneWay = mean(whole, FieldModel::oneWayPx, m -> 2 * m.oneWayDirectionDeg());
        return Optional.of(new Corners(
                stars,
                median(whole, FieldModel::centreFwhmPx),
                median(whole, FieldModel::curvaturePx),
                error(whole, FieldModel::curvatureErrorPx),
                tilt[0],
                error(whole, FieldModel::tiltErrorPx),
                tilt[1],
                oneWay[0],
                error(whole, FieldModel::oneWayErrorPx),
                oneWay[1] / 2));
    }

    /** Arrows of the frames put together, {length, direction}; one too slight to have a direction is none. */
    private static double[] mean(
            List<FieldModel> models, ToDoubleFunction<FieldModel> length, ToDoubleFunction<FieldModel> directionDeg) {
        double x = median(models, m -> part(length.applyAsDouble(m), Math.cos(turn(m, directionDeg))));
        double y = median(models, m -> part(length.applyAsDouble(m), Math.sin(turn(m, directionDeg))));
        return new double[] {Math.hypot(x, y), Math.toDegrees(Math.atan2(y, x))};
    }

    private static double turn(FieldModel m, ToDoubleFunction<FieldModel> directionDeg) {
        return Math.toRadians(directionDeg.applyAsDouble(m));
    }

    private static double part(double length, double along) {
        return Double.isNaN(along) ? 0 : length * along;
    }

    private static double median(List<FieldModel> models, ToDoubleFunction<FieldModel> part) {
        return Robust.median(models.stream().mapToDouble(part).toArray());
    }

    /** Of the median over the frames, each with an error of its own. */
    private static double error(List<FieldModel> models, ToDoubleFunction<FieldModel> part) {
        double medianOverMean = models.size() > 2 ? Math.sqrt(Math.PI / 2) : 1;
        return medianOverMean * median(models, part) / Math.sqrt(models.size());
    }

    boolean tilted() {
        return tiltPx > LEAST_ERRORS * tiltErrorPx;
    }

    /** Whether a tilt shows on both sides of the middle. */
    boolean oneWay() {
        return oneWayPx > LEAST_ERRORS * oneWayErrorPx && oneWayPx > LEAST_SHARE * risePx;
    }

    /** Rise to the corners along the axis on which it is least: what a tilt has no part in. */
    double spacingPx() {
        return oneWay() ? risePx - oneWayPx / 2 : risePx;
    }

    double spacingErrorPx() {
        return oneWay() ? Math.hypot(riseErrorPx, oneWayErrorPx / 2) : riseErrorPx;
    }

    boolean misplaced() {
        return spacingPx() > LEAST_ERRORS * spacingErrorPx() && spacingPx() > LEAST_BESIDE * (risePx - spacingPx());
    }
}
