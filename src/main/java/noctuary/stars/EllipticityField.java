package noctuary.stars;

import java.util.Arrays;
import java.util.List;
import noctuary.stats.Robust;

/**
 * Elongation over the field as two smooth surfaces of its components, so that noise, which points anywhere, averages
 * out; what a surface's own error adds to the length is taken off in quadrature. Elongation that differs from star to
 * star by more than noise explains is added back.
 */
final class EllipticityField {
    private final Surface g1;
    private final Surface g2;
    private final double own;
    private final double[] x;
    private final double[] y;

    EllipticityField(List<MeasuredStar> stars, int width, int height) {
        int n = stars.size();
        x = stars.stream()
                .mapToDouble(s -> 2 * (s.star().x() + 0.5) / width - 1)
                .toArray();
        y = stars.stream()
                .mapToDouble(s -> 2 * (s.star().y() + 0.5) / height - 1)
                .toArray();
        double[] error = stars.stream().mapToDouble(s -> s.shape().shearError()).toArray();
        int terms = Surface.termsFor(n);
        g1 = Surface.fit(
                x, y, stars.stream().mapToDouble(s -> s.shape().shear().g1()).toArray(), error, terms);
        g2 = Surface.fit(
                x, y, stars.stream().mapToDouble(s -> s.shape().shear().g2()).toArray(), error, terms);
        double typical = Robust.median(error);
        double spread = (g1.ownVariance() + g2.ownVariance()) / 2;
        double doubt = 3 * (spread + typical * typical) * Math.sqrt(2.0 / Math.max(1, n));
        own = spread > doubt ? 2 * spread : 0;
    }

    /** Median over the places of the stars, 16th and 84th percentile, standard error of the median. */
    Summary summary() {
        int n = x.length;
        double[] length = new double[n];
        double[] variance = new double[n];
        for (int i = 0; i < n; i++) {
            double a = g1.at(x[i], y[i]);
            double b = g2.at(x[i], y[i]);
            variance[i] = (g1.varianceAt(x[i], y[i]) + g2.varianceAt(x[i], y[i])) / 2;
            length[i] = Math.sqrt(Math.max(0, a * a + b * b - 2 * variance[i]) + own);
        }
        Arrays.sort(length);
        double median = Robust.quantileOfSorted(length, 0.5);
        double slope = 2 * Math.exp(-2 * median);
        return new Summary(
                Shear.ellipticity(median),
                Shear.ellipticity(Robust.quantileOfSorted(length, 0.16)),
                Shear.ellipticity(Robust.quantileOfSorted(length, 0.84)),
                slope * Math.sqrt(Robust.median(variance)));
    }
}
