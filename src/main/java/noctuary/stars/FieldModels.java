package noctuary.stars;

import java.util.List;
import java.util.Optional;

/** Reads tilt and curvature out of the surface of widths. */
final class FieldModels {
    private static final int FEWEST = 10;

    private FieldModels() {}

    static Optional<FieldModel> of(List<MeasuredStar> stars, int width, int height) {
        int n = stars.size();
        if (n < FEWEST) {
            return Optional.empty();
        }
        double[] x = stars.stream()
                .mapToDouble(s -> 2 * (s.star().x() + 0.5) / width - 1)
                .toArray();
        double[] y = stars.stream()
                .mapToDouble(s -> 2 * (s.star().y() + 0.5) / height - 1)
                .toArray();
        double[] value = stars.stream().mapToDouble(s -> s.shape().fwhm()).toArray();
        double[] error = stars.stream()
                .mapToDouble(s -> s.shape().logFwhmError() * s.shape().fwhm())
                .toArray();
        return Optional.of(model(n, Surface.fit(x, y, value, error, Surface.termsFor(n)), width, height));
    }

    private static FieldModel model(int n, Surface s, int width, int height) {
        double[] c = s.coefficient();
        double aspect = (double) height / width;
        double toX = 2 * Math.hypot(1, aspect);
        double toY = toX / aspect;
        double tiltX = s.terms() > 1 ? toX * c[1] : Double.NaN;
        double tiltY = s.terms() > 1 ? toY * c[2] : Double.NaN;
        double tilt = Math.hypot(tiltX, tiltY);
        double[] along = {0, toX * tiltX / tilt, toY * tiltY / tilt, 0, 0, 0};
        boolean quadratic = s.terms() == 6;
        double[] corners = {0, 0, 0, 1, 0, 1};
        double[] radial = {0, 0, 0, (1 + aspect * aspect) / 2, 0, (1 + 1 / (aspect * aspect)) / 2};
        return new FieldModel(
                n,
                c[0],
                Math.sqrt(s.covariance()[0]),
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
