package noctuary.stars;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import noctuary.stats.Robust;

/** Medians over the measured stars of one frame, each star weighing by its error and the stars' own spread. */
final class ShapeSummary {
    private final List<MeasuredStar> stars;
    private final Psf psf;

    ShapeSummary(List<MeasuredStar> stars, Psf psf) {
        this.stars = stars;
        this.psf = psf;
    }

    /** Width; the error of the shared beta is part of the standard error. */
    Summary fwhm() {
        double[] value = of(s -> s.star().fwhmPx());
        double[] error = of(s -> s.shape().logFwhmError() * s.star().fwhmPx());
        WeightedMedian median = WeightedMedian.of(value, error);
        return summary(value, median.value(), Math.hypot(median.error(), psf.sharedError() * median.value()));
    }

    Summary halfFluxRadius() {
        double share = psf.profile().halfFluxOverFwhm();
        Summary width = fwhm();
        return new Summary(
                share * width.median(), share * width.low(), share * width.high(), share * width.standardError());
    }

    private static Summary summary(double[] value, double median, double error) {
        double[] sorted = value.clone();
        Arrays.sort(sorted);
        return new Summary(
                median,
                Math.min(median, Robust.quantileOfSorted(sorted, 0.16)),
                Math.max(median, Robust.quantileOfSorted(sorted, 0.84)),
                error);
    }

    private double[] of(ToDoubleFunction<MeasuredStar> figure) {
        return stars.stream().mapToDouble(figure).toArray();
    }
}
