package noctuary.measure;

import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.fact.Printed;
import noctuary.stats.Robust;
import noctuary.stats.TheilSen;

/** Light that fades frame by frame while the stars spread and the background does not rise. */
final class DewRule {
    private DewRule() {}

    static Optional<Observation> look(CourseSeries all) {
        CourseSeries series = all.only(f -> f.relativeTransparency().isPresent()
                && f.fwhmPx().isPresent()
                && f.fwhmErrorPx().isPresent()
                && f.backgroundLevel().isPresent());
        if (!series.enough() || !series.airmassKnown()) {
            return Optional.empty();
        }
        LightLoss loss = LightLoss.of(series);
        double[] excess =
                IntStream.range(0, series.size()).mapToDouble(loss::excess).toArray();
        TheilSen fading = series.trend(excess);
        double error = Robust.median(series.values(f -> f.fwhmErrorPx().getAsDouble()));
        double[] background = series.values(f -> f.backgroundLevel().getAsDouble());
        double rise = series.trend(background).slope() * series.spanHours();
        boolean dew = fading.rises()
                && loss.clear(series.size() - 1)
                && FocusDriftRule.grows(series, series.atZenith(CourseFrame::fwhmPx), error)
                && !CloudRule.clearlyUp(series, rise);
        return dew ? Optional.of(observation(series, fading, rise)) : Optional.empty();
    }

    private static Observation observation(CourseSeries series, TheilSen fading, double rise) {
        CourseFrame first = series.frames().get(0);
        CourseFrame last = series.frames().get(series.size() - 1);
        double share = last.relativeTransparency().getAsDouble()
                / first.relativeTransparency().getAsDouble();
        double[] widths = series.values(f -> f.fwhmPx().getAsDouble());
        String evidence = "from " + CourseSeries.clock(first) + " to " + CourseSeries.clock(last)
                + " the light fell to "
                + Printed.number(100 * share) + " %, " + Printed.number(fading.slope())
                + " mag an hour beyond airmass (95 % interval " + Printed.number(fading.low()) + " to "
                + Printed.number(fading.high()) + "); FWHM from " + Printed.number(widths[0]) + " to "
                + Printed.number(widths[widths.length - 1]) + " px; background changed by " + Printed.number(rise)
                + " ADU; " + widths.length + " frames";
        return new Observation(
                "dew",
                "The light faded steadily while the stars spread and the background did not rise: looks like dew.",
                evidence);
    }
}
