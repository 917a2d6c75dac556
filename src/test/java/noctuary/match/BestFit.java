package noctuary.match;

import java.util.List;
import java.util.function.ToDoubleFunction;
import noctuary.match.StarPairs.Shared;

/**
 * What could be done at best for a simulated pair: all its shared stars, each known for what it is, none else, and each
 * weighed by the error it was given.
 *
 * @param expectedPx root mean square error over the shared stars to be expected, pixels of the finer image. With errors
 *     that are normal no estimator without bias has a smaller one (Cramér-Rao).
 * @param drawnPx the same for the errors that were drawn
 * @param residualPx root mean square distance of the shared stars to be expected, pixels of the finer image
 */
record BestFit(double expectedPx, double drawnPx, double residualPx) {

    static BestFit of(StarPairs pair) {
        List<Shared> shared = pair.shared();
        double[] weight = of(shared, star -> 1 / variance(pair, star));
        Alignment fitted = Similarity.fit(
                        of(shared, star -> star.from().x()),
                        of(shared, star -> star.from().y()),
                        of(shared, star -> star.to().x()),
                        of(shared, star -> star.to().y()),
                        weight,
                        weight.length,
                        pair.truth().mirrored())
                .alignment(weight.length, 0);
        double squares = shared.stream()
                .mapToDouble(s -> 2 * variance(pair, s))
                .average()
                .orElseThrow();
        return new BestFit(
                pair.finer() * expected(pair, weight), pair.errorPx(fitted), pair.finer() * Math.sqrt(squares));
    }

    /** Of one coordinate of the distance, square pixels of the second list. */
    private static double variance(StarPairs pair, Shared star) {
        double scale = pair.truth().scale();
        return star.sigma() * star.sigma() * (1 + scale * scale);
    }

    /**
     * At z the fit is off by t + a (z - z̄) with var t = 1 / Σw and var a = 1 / Σ w |z - z̄|² in each of two coordinates,
     * z̄ the weighted mean; pixels of the second list.
     */
    private static double expected(StarPairs pair, double[] weight) {
        double[] x = of(pair.shared(), Shared::x);
        double[] y = of(pair.shared(), Shared::y);
        double all = 0;
        double mx = 0;
        double my = 0;
        for (int i = 0; i < weight.length; i++) {
            all += weight[i];
            mx += weight[i] * x[i];
            my += weight[i] * y[i];
        }
        double spread = 0;
        double weighted = 0;
        for (int i = 0; i < weight.length; i++) {
            double apart = Math.pow(x[i] - mx / all, 2) + Math.pow(y[i] - my / all, 2);
            spread += apart / weight.length;
            weighted += weight[i] * apart;
        }
        return Math.sqrt(2 * (1 / all + spread / weighted));
    }

    private static double[] of(List<Shared> shared, ToDoubleFunction<Shared> number) {
        return shared.stream().mapToDouble(number).toArray();
    }
}
