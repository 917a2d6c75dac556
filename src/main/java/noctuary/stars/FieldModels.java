package noctuary.stars;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import noctuary.stats.Robust;

/**
 * Reads tilt and curvature out of the surface of widths: 1, x, y from ten stars on, x², xy, y² from thirty, and from
 * sixty the fourth power of the distance from the middle, as which the faults of a corrector grow.
 */
final class FieldModels {
    private static final int FEWEST = 10;
    private static final int LINEAR = 3;
    private static final int QUADRATIC = 6;
    private static final int FOR_QUADRATIC = 30;
    private static final int FOR_FOURTH = 60;
    /** Share of the width within which the start of the fit takes stars for alike. */
    private static final double ALIKE = 0.03;

    private final int width;
    private final int height;
    private final double aspect;

    private FieldModels(int width, int height) {
        this.width = width;
        this.height = height;
        this.aspect = (double) height / width;
    }

    /** @param sharedError relative error that all widths have in common */
    static Optional<FieldModel> of(List<MeasuredStar> stars, int width, int height, double sharedError) {
        return stars.size() < FEWEST
                ? Optional.empty()
                : Optional.of(new FieldModels(width, height).model(stars, sharedError));
    }

    private FieldModel model(List<MeasuredStar> stars, double sharedError) {
        int n = stars.size();
        int terms = n >= FOR_FOURTH ? QUADRATIC + 1 : n >= FOR_QUADRATIC ? QUADRATIC : LINEAR;
        double[][] basis =
                stars.stream().map(s -> basis(s.star(), terms)).toArray(double[][]::new);
        double[] value = stars.stream().mapToDouble(s -> s.shape().fwhm()).toArray();
        double[] error = stars.stream()
                .mapToDouble(s -> s.shape().logFwhmError() * s.shape().fwhm())
                .toArray();
        return model(n, Locus.fit(basis, value, error, ALIKE * Robust.median(value)), sharedError);
    }

    private double[] basis(Star star, int terms) {
        double x = 2 * (star.x() + 0.5) / width - 1;
        double y = 2 * (star.y() + 0.5) / height - 1;
        double r2 = (x * x + aspect * aspect * y * y) / (1 + aspect * aspect);
        double[] basis = Arrays.copyOf(Surface.basis(x, y, Math.min(QUADRATIC, terms)), terms);
        if (terms > QUADRATIC) {
            basis[QUADRATIC] = r2 * r2;
        }
        return basis;
    }

    private FieldModel model(int n, Surface s, double sharedError) {
        double[] c = s.coefficient();
        double toX = 2 * Math.hypot(1, aspect);
        double toY = toX / aspect;
        double tiltX = toX * c[1];
        double tiltY = toY * c[2];
        double tilt = Math.hypot(tiltX, tiltY);
        double[] along = {0, toX * tiltX / tilt, toY * tiltY / tilt, 0, 0, 0, 0};
        boolean quadratic = s.terms() >= QUADRATIC;
        double[] corners = {0, 0, 0, 1, 0, 1, 1};
        double[] radial = {0, 0, 0, (1 + aspect * aspect) / 2, 0, (1 + 1 / (aspect * aspect)) / 2, 1};
        return new FieldModel(
                n,
                c[0],
                Math.hypot(Math.sqrt(s.covariance()[0]), sharedError * c[0]),
                quadratic ? s.combined(corners) : Double.NaN,
                quadratic ? Math.sqrt(s.varianceOf(corners)) : Double.NaN,
                tilt,
                tilt > 0 ? Math.sqrt(s.varianceOf(along)) : Double.NaN,
                Math.toDegrees(Math.atan2(tiltY, tiltX)),
                quadratic ? s.combined(radial) : Double.NaN,
                quadratic ? Math.sqrt(s.varianceOf(radial)) : Double.NaN,
                Math.sqrt(s.ownVariance()));
    }
}
