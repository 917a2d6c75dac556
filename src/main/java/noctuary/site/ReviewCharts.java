package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import noctuary.draw.IntervalPlot;
import noctuary.draw.IntervalPlot.Tone;
import noctuary.review.MeasureReview;
import noctuary.review.NightValue;
import noctuary.review.Review;
import noctuary.review.YearSpan;
import noctuary.site.page.Drawing;

/** Intervals of a review. A chart with nothing to show is null. */
final class ReviewCharts {
    /** Share of the value before that the overview still draws. */
    private static final double WIDEST = 1.5;

    /** More nights than that are drawn year by year. */
    private static final int MOST_ROWS = 48;

    private ReviewCharts() {}

    /** Every measure's shift as a share of its value before. */
    static Drawing overview(Review review) {
        List<IntervalPlot.Row> rows = review.measures().stream()
                .filter(ReviewCharts::hasShare)
                .map(ReviewCharts::share)
                .toList();
        IntervalPlot plot = new IntervalPlot("Shifts of all measures", axis(review), "", "", rows);
        String caption =
                "Each measure’s shift, as a share of its value before, with its interval. A dot is better, a square worse, a diamond open. Measures that can be zero have their own plots below.";
        return rows.isEmpty() ? null : Charts.drawing(plot, "shifts", caption);
    }

    private static String axis(Review review) {
        boolean pictures = review.measures().stream().anyMatch(ReviewText::ofPictures);
        String before = ReviewText.before(pictures);
        return ReviewText.after(pictures) + " less " + before + ", % of " + before;
    }

    /** A share says something of a value that is never zero nor below, and while its interval stays on the paper. */
    private static boolean hasShare(MeasureReview m) {
        boolean positive = Stream.concat(m.nights().before().stream(), m.nights().after().stream())
                .allMatch(n -> n.value() > 0);
        double before = m.before().orElse(0);
        return positive
                && m.shift().isPresent()
                && before > 0
                && m.low().orElse(0) >= -before
                && m.high().orElse(0) <= WIDEST * before;
    }

    private static IntervalPlot.Row share(MeasureReview m) {
        double before = Math.abs(m.before().getAsDouble());
        String label = m.nights().measure().label() + (m.nights().primary() ? " (decides)" : "");
        return new IntervalPlot.Row(
                label,
                100 * m.shift().getAsDouble() / before,
                100 * m.low().orElse(Double.NaN) / before,
                100 * m.high().orElse(Double.NaN) / before,
                ReviewText.tone(m.verdict()),
                m.verdict().words());
    }

    /** One measure: every night against the middle of those before, then the shift with its interval. */
    static Drawing nights(MeasureReview m) {
        if (m.before().isEmpty()) {
            return null;
        }
        double before = m.before().getAsDouble();
        boolean pictures = ReviewText.ofPictures(m);
        boolean byYear = m.nights().before().size() + m.nights().after().size() > MOST_ROWS;
        List<IntervalPlot.Row> rows = new ArrayList<>();
        rows.addAll(rows(m.nights().before(), byYear, before, ReviewText.before(pictures), Tone.OPEN));
        rows.addAll(rows(m.nights().after(), byYear, before, ReviewText.after(pictures), ReviewText.tone(m.verdict())));
        if (m.shift().isPresent()) {
            rows.add(new IntervalPlot.Row(
                    "Shift",
                    m.shift().getAsDouble(),
                    orNone(m.low()),
                    orNone(m.high()),
                    ReviewText.tone(m.verdict()),
                    m.verdict().words()));
        }
        String unit = m.nights().measure().unit();
        boolean less = m.nights().measure().lessIsBetter();
        IntervalPlot plot = new IntervalPlot(
                m.nights().measure().label() + (byYear ? " by year" : pictures ? " by entry" : " by night"),
                "against the middle of the " + middle(pictures) + (unit.isEmpty() ? "" : ", " + unit),
                less ? "better" : "worse",
                less ? "worse" : "better",
                rows);
        return Charts.drawing(
                plot,
                "nights-" + m.nights().measure().id(),
                (byYear
                                ? "The middle of each year, with the span from the 16th to the 84th percentile of its "
                                        + (pictures ? "versions" : "nights") + ","
                                : "Every " + (pictures ? "version" : "night"))
                        + " against the middle of the " + middle(pictures) + ", and the shift with its interval.");
    }

    private static String middle(boolean pictures) {
        return (pictures ? "versions " : "nights ") + ReviewText.before(pictures);
    }

    private static List<IntervalPlot.Row> rows(
            List<NightValue> values, boolean byYear, double before, String side, Tone tone) {
        if (!byYear) {
            return values.stream().map(n -> night(n, before, side, tone)).toList();
        }
        return YearSpan.of(values).stream()
                .map(year -> new IntervalPlot.Row(
                        year.year() + ", " + year.values(),
                        year.median() - before,
                        orNone(year.low()) - before,
                        orNone(year.high()) - before,
                        tone,
                        side))
                .toList();
    }

    private static IntervalPlot.Row night(NightValue n, double before, String side, Tone tone) {
        String target = n.target().isEmpty() ? "" : " " + n.target();
        return new IntervalPlot.Row(n.night() + target, n.value() - before, Double.NaN, Double.NaN, tone, side);
    }

    private static double orNone(OptionalDouble value) {
        return value.orElse(Double.NaN);
    }
}
