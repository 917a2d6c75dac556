package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.review.Circumstance;
import noctuary.review.DepthPair;
import noctuary.review.EntryNight;
import noctuary.review.Foretold;
import noctuary.review.Measure;
import noctuary.review.MeasureReview;
import noctuary.review.NightValue;
import noctuary.review.Review;
import noctuary.review.Side;
import noctuary.site.page.ChangePage.AbsentRow;
import noctuary.site.page.ChangePage.CircumstanceRow;
import noctuary.site.page.ChangePage.ForetoldRow;
import noctuary.site.page.ChangePage.LossRow;
import noctuary.site.page.ChangePage.MeasurePart;
import noctuary.site.page.ChangePage.NightRow;
import noctuary.site.page.ChangePage.PairRow;
import noctuary.site.page.ChangePage.ValueRow;
import noctuary.site.page.Link;

/** The parts of a review as printed on a page at one address. */
final class ReviewRows {
    /** Values listed for each side of a measure. */
    private static final int MOST_VALUES = 24;

    private final Ledger ledger;
    private final Address here;
    private final Review review;

    ReviewRows(Ledger ledger, Address here, Review review) {
        this.ledger = ledger;
        this.here = here;
        this.review = review;
    }

    List<NightRow> nights(Side side) {
        return side.nights().stream().map(this::night).toList();
    }

    private NightRow night(EntryNight night) {
        return new NightRow(
                night.night().toString(),
                link(night.slug()),
                night.target(),
                night.fileCount() == 0
                        ? "none"
                        : night.stacked() ? "stack" : Numerals.count(night.fileCount(), "frame", "frames"),
                Numerals.fixed(night.sky().airmass(), 2),
                Numerals.fixed(night.sky().moonMagnitudes(), 2));
    }

    MeasurePart measure(MeasureReview m) {
        Measure measure = m.nights().measure();
        List<ValueRow> values = new ArrayList<>();
        boolean pictures = ReviewText.ofPictures(m);
        List<NightValue> before = m.nights().before();
        List<NightValue> after = m.nights().after();
        int left = Math.max(0, before.size() - MOST_VALUES);
        int right = Math.min(after.size(), MOST_VALUES);
        before.subList(left, before.size()).forEach(n -> values.add(value(ReviewText.before(pictures), measure, n)));
        after.subList(0, right).forEach(n -> values.add(value(ReviewText.after(pictures), measure, n)));
        return new MeasurePart(
                measure.id(),
                measure.label(),
                m.nights().primary(),
                m.verdict().words(),
                ReviewText.tone(Optional.of(m.verdict())),
                m.why(),
                middles(m),
                ReviewGrounds.of(m),
                ReviewCharts.nights(m),
                values,
                leftOut(left + after.size() - right));
    }

    private static String leftOut(int nights) {
        return nights == 0
                ? ""
                : "The " + MOST_VALUES + " nearest to the change on either side; " + nights
                        + " further from it stand on the pages of their entries.";
    }

    private static String middles(MeasureReview m) {
        String before = m.before().isPresent() ? ReviewText.number(m.before().getAsDouble()) : "–";
        return before + " → " + ReviewText.value(m.nights().measure(), m.after());
    }

    private ValueRow value(String side, Measure measure, NightValue n) {
        return new ValueRow(
                side,
                n.night().toString(),
                link(n.slug()),
                n.target(),
                ReviewText.value(measure, n.value()),
                n.frames() + "");
    }

    List<AbsentRow> absent() {
        return review.absent().stream()
                .map(a -> new AbsentRow(a.measure().label(), a.why()))
                .toList();
    }

    List<CircumstanceRow> circumstances() {
        return review.circumstances().stream()
                .filter(c -> c.before().isPresent() || c.after().isPresent())
                .map(c -> new CircumstanceRow(c.label(), range(c, c.before()), range(c, c.after())))
                .toList();
    }

    private static String range(Circumstance c, Optional<Circumstance.Range> range) {
        return range.map(r -> ReviewText.withUnit(
                        Numerals.fixed(r.low(), c.decimals()) + " to " + Numerals.fixed(r.high(), c.decimals())
                                + ", middle " + Numerals.fixed(r.median(), c.decimals()),
                        c.unit()))
                .orElse("");
    }

    List<LossRow> losses() {
        return review.losses().stream()
                .map(l -> new LossRow(
                        l.cause(),
                        perNight(l.minutesBefore(), review.change().before()),
                        perNight(l.minutesAfter(), review.change().after())))
                .toList();
    }

    private static String perNight(double minutes, Side side) {
        int nights = side.dates().size();
        return minutes == 0 || nights == 0
                ? "0"
                : Numerals.fixed(minutes, 0) + " (" + Numerals.fixed(minutes / nights, 0) + " a night)";
    }

    List<PairRow> pairs() {
        return review.pairs().stream().map(this::pair).toList();
    }

    private PairRow pair(DepthPair p) {
        return new PairRow(
                p.target(),
                link(p.before().slug()),
                link(p.after().slug()),
                p.sameFilter() ? said(p.filterBefore()) : said(p.filterBefore()) + " → " + said(p.filterAfter()),
                p.matched() + "",
                Numerals.fixed(p.scaleRatio(), 4),
                Numerals.fixed(p.rotationDeg(), 2) + "°" + (p.mirrored() ? ", mirrored" : ""),
                withError(p.throughput(), p.throughputError()),
                p.deeperMag().isPresent()
                        ? ReviewText.withUnit(ReviewText.signed(p.deeperMag().getAsDouble(), 1), "mag")
                        : "",
                p.why());
    }

    private static String said(String filter) {
        return filter.isEmpty() ? "none told" : filter;
    }

    private static String withError(OptionalDouble value, OptionalDouble error) {
        return value.isEmpty() ? "" : Numerals.fixed(value, 2) + " ± " + Numerals.fixed(error, 2);
    }

    List<ForetoldRow> foretold() {
        return review.foretold().stream().map(ReviewRows::foretold).toList();
    }

    private static ForetoldRow foretold(Foretold f) {
        return new ForetoldRow(
                f.label(),
                ReviewText.withUnit(Numerals.fixed(f.before(), f.decimals()), f.unit()),
                ReviewText.withUnit(Numerals.fixed(f.after(), f.decimals()), f.unit()),
                gain(f, f.foretold()),
                gain(f, f.shown()),
                f.remark());
    }

    private static String gain(Foretold f, OptionalDouble value) {
        if (value.isEmpty()) {
            return "";
        }
        return f.difference()
                ? ReviewText.withUnit(ReviewText.signed(value.getAsDouble(), f.decimals()), f.unit())
                : "× " + ReviewText.number(value.getAsDouble());
    }

    private Link link(String slug) {
        return ledger.entry(slug).map(e -> ledger.entryLink(here, e)).orElseGet(() -> Link.plain(slug));
    }
}
