package noctuary.stars;

import java.util.List;
import java.util.Optional;
import noctuary.stats.Robust;

/**
 * Fits the squares of widths over the field, because it is squares that add up when blurs come together: so a tilted
 * sensor and a corrector at the wrong distance are both within the terms of {@link FieldBasis}.
 */
final class FieldModels {
    private static final int FEWEST = 10;
    /** Share of the width within which the start of the fit takes stars for alike. */
    static final double ALIKE = 0.03;

    private FieldModels() {}

    /** @param sharedError relative error that all widths have in common */
    static Optional<FieldModel> of(List<MeasuredStar> stars, int width, int height, double sharedError) {
        return stars.size() < FEWEST
                ? Optional.empty()
                : Optional.of(model(stars, new FieldBasis(width, height), sharedError));
    }

    private static FieldModel model(List<MeasuredStar> stars, FieldBasis basis, double sharedError) {
        int n = stars.size();
        int terms = FieldBasis.termsFor(n);
        double[][] bases = stars.stream()
                .map(s -> basis.at(s.star().x(), s.star().y(), terms))
                .toArray(double[][]::new);
        double[] width = stars.stream().mapToDouble(s -> s.shape().fwhm()).toArray();
        double[] square = new double[n];
        double[] error = new double[n];
        for (int i = 0; i < n; i++) {
            double own = stars.get(i).shape().logFwhmError() * width[i];
            square[i] = width[i] * width[i] - own * own;
            error[i] = 2 * width[i] * own;
        }
        double alike = 2 * ALIKE * Math.pow(Robust.median(width), 2);
        return new Widths(Locus.fit(bases, square, error, alike), basis.aspect(), sharedError).model(n);
    }
}
