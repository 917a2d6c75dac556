package noctuary.measure;

import java.util.Optional;
import noctuary.fact.Printed;
import noctuary.stats.Robust;
import noctuary.stats.TheilSen;

/** Stars that widen from frame to frame, more than their errors and than the airmass explains. */
final class FocusDriftRule {
    /** Growth over the series that is worth a word, as a share of the width. */
    private static final double LEAST_GROWTH = 0.08;

    private static final double LEAST_ERRORS = 4;

    private FocusDriftRule() {}

    static Optional<Observation> look(CourseSeries all) {
        CourseSeries series =
                all.only(f -> f.fwhmPx().isPresent() && f.fwhmErrorPx().isPresent());
        if (!series.enough()) {
            return Optional.empty();
        }
        double[] raw = series.values(f -> f.fwhmPx().getAsDouble());
        double error = Robust.median(series.values(f -> f.fwhmErrorPx().getAsDouble()));
        boolean grows = growth(series, raw, error) > 0 && grows(series, series.atZenith(CourseFrame::fwhmPx), error);
        return grows ? Optional.of(observation(series)) : Optional.empty();
    }

    /** Whether a width grows steadily: at every pair on the whole, and by far more than errors and scatter. */
    static boolean grows(CourseSeries series, double[] widths, double error) {
        TheilSen line = series.trend(widths);
        double growth = growth(series, widths, error);
        double[] rest = new double[widths.length];
        double[] hours = series.hours();
        for (int i = 0; i < rest.length; i++) {
            rest[i] = widths[i] - line.at(hours[i]);
        }
        double noise = Math.max(Math.sqrt(2) * error, Robust.sigma(rest));
        return line.rises() && growth > LEAST_ERRORS * noise && growth > LEAST_GROWTH * Robust.median(widths);
    }

    private static double growth(CourseSeries series, double[] widths, double error) {
        double growth = series.trend(widths).slope() * series.spanHours();
        return growth > LEAST_ERRORS * error ? growth : 0;
    }

    private static Observation observation(CourseSeries series) {
        TheilSen line = series.trend(series.atZenith(CourseFrame::fwhmPx));
        boolean corrected = series.airmassKnown();
        String text = corrected
                ? "Stars widened steadily, more than the changing airmass explains: looks like focus drift. Seeing that"
                        + " worsens steadily would look the same."
                : "Stars widened steadily: looks like focus drift, or a target that sinks; the airmass is not known.";
        CourseFrame first = series.frames().get(0);
        CourseFrame last = series.frames().get(series.size() - 1);
        String evidence = "FWHM " + width(first) + " at " + CourseSeries.clock(first) + ", " + width(last) + " at "
                + CourseSeries.clock(last) + "; " + (corrected ? "brought to airmass 1, " : "")
                + Printed.number(line.slope()) + " px an hour (95 % interval " + Printed.number(line.low()) + " to "
                + Printed.number(line.high()) + ") over " + series.size() + " frames";
        return new Observation("focus-drift", text, evidence);
    }

    private static String width(CourseFrame frame) {
        return Printed.withError(
                        frame.fwhmPx().getAsDouble(), frame.fwhmErrorPx().getAsDouble())
                + " px";
    }
}
