package noctuary.stars;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/** Reads tilt and curvature out of the surface of widths, which has its terms from {@link FieldBasis}. */
final class FieldModels {
    private static final int FEWEST = 10;
    /** Share of the width within which the start of the fit takes stars for alike. */
    static final double ALIKE = 0.03;

    private final FieldBasis basis;

    private FieldModels(FieldBasis basis) {
        this.basis = basis;
    }

    /** @param sharedError relative error that all widths have in common */
    static Optional<FieldModel> of(List<MeasuredStar> stars, int width, int height, double sharedError) {
        return stars.size() < FEWEST
                ? Optional.empty()
                : Optional.of(new FieldModels(new FieldBasis(width, height)).model(stars, sharedError));
    }

    private FieldModel model(List<MeasuredStar> stars, double sharedError) {
        int n = stars.size();
        int terms = FieldBasis.termsFor(n);
        double[][] bases = stars.stream()
                .map(s -> basis.at(s.star().x(), s.star().y(), terms))
                .toArray(double[][]::new);
        double[] value = stars.stream().mapToDouble(s -> s.shape().fwhm()).toArray();
        double[] error = stars.stream()
                .mapToDouble(s -> s.shape().logFwhmError() * s.shape().fwhm())
                .toArray();
        return model(n, Locus.fit(bases, value, error, ALIKE * Robust.median(value)), sharedError);
    }

    private FieldModel model(int n, Surface s, double sharedError) {
        boolean bent = s.terms() == FieldBasis.BENT;
        double aspect = basis.aspect();
        double[] corners = {0, 0, 0, 1, 0, 1, 1};
        double[] radial = {0, 0, 0, (1 + aspect * aspect) / 2, 0, (1 + 1 / (aspect * aspect)) / 2, 1};
        double centre = s.coefficient()[0];
        double shared = sharedError * centre;
        double toX = 2 * Math.hypot(1, aspect);
        Arrow tilt = Arrow.of(s, new double[] {0, toX, 0, 0, 0, 0, 0}, new double[] {0, 0, toX / aspect, 0, 0, 0, 0});
        Arrow oneWay = Arrow.of(
                s,
                new double[] {0, 0, 0, 1 + aspect * aspect, 0, -1 - 1 / (aspect * aspect), 0},
                new double[] {0, 0, 0, 0, aspect + 1 / aspect, 0, 0});
        return new FieldModel(
                n,
                bent ? centre : Double.NaN,
                bent ? Math.sqrt(s.covariance()[0] + shared * shared) : Double.NaN,
                bent ? s.combined(corners) : Double.NaN,
                bent ? Math.sqrt(s.varianceOf(corners)) : Double.NaN,
                tilt.amount(),
                tilt.error(),
                tilt.directionDeg(),
                bent ? s.combined(radial) : Double.NaN,
                bent ? Math.sqrt(s.varianceOf(radial)) : Double.NaN,
                bent ? oneWay.amount() : Double.NaN,
                bent ? oneWay.error() : Double.NaN,
                bent ? oneWay.directionDeg() / 2 : Double.NaN,
                Math.sqrt(s.ownVariance()));
    }

    /** Two combinations of the terms as an arrow; no direction where noise alone could give it. */
    private record Arrow(double amount, double error, double directionDeg) {
        private static final double LEAST_ERRORS = 2;

        /** Noise across the arrow always adds to its length, by its variance to the square; that is taken off. */
        static Arrow of(Surface s, double[] toX, double[] toY) {
            double x = s.combined(toX);
            double y = s.combined(toY);
            double length = Math.max(1e-12, Math.hypot(x, y));
            double along = s.varianceOf(mixed(toX, x / length, toY, y / length));
            double across = s.varianceOf(mixed(toX, -y / length, toY, x / length));
            double amount = Math.sqrt(Math.max(0, length * length - across));
            double error = Math.sqrt(along);
            boolean clear = amount > LEAST_ERRORS * error;
            return new Arrow(amount, error, clear ? Math.toDegrees(Math.atan2(y, x)) : Double.NaN);
        }

        private static double[] mixed(double[] a, double byA, double[] b, double byB) {
            return IntStream.range(0, a.length)
                    .mapToDouble(i -> byA * a[i] + byB * b[i])
                    .toArray();
        }
    }
}
