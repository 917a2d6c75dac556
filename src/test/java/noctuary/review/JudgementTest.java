package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import noctuary.stats.RankSum;
import org.junit.jupiter.api.Test;

class JudgementTest {
    private static final Set<Influence> RIG = Set.of(Influence.RIG);
    private static final double[] POOR = {3.4, 3.1, 3.7, 3.3, 3.5, 3.0, 3.6, 3.2};
    private static final double[] GOOD = {2.7, 2.5, 2.9, 2.6, 2.8, 2.45, 2.95, 2.55};

    @Test
    void eightSharperNightsAreBetter() {
        MeasureReview review = judge(Nights.FWHM, Nights.before(POOR), Nights.after(GOOD));
        assertThat(review.verdict()).isEqualTo(Verdict.BETTER);
        assertThat(review.before()).hasValueCloseTo(3.35, within(1e-12));
        assertThat(review.p()).hasValueCloseTo(2 / 12870.0, within(1e-12));
        assertThat(review.adjustedP()).isEqualTo(review.p());
        assertThat(review.high().orElseThrow()).isNegative();
        assertThat(review.grounds().exact()).isTrue();
        assertThat(review.why())
                .isEqualTo("FWHM fell by 0.67 arcsec (20 %) over 8 nights before and 8 after;"
                        + " likely between 0.45 and 0.87 arcsec.");
    }

    @Test
    void moreIsWorseOrBetterAsTheMeasureWants() {
        assertThat(judge(Nights.FWHM, Nights.before(GOOD), Nights.after(POOR)).verdict())
                .isEqualTo(Verdict.WORSE);
        Measure more = new Measure("depth", "Depth", "mag", false);
        assertThat(judge(more, Nights.before(GOOD), Nights.after(POOR)).verdict())
                .isEqualTo(Verdict.BETTER);
    }

    /** The shift in units is the Hodges-Lehmann shift of the values themselves when the measure is no ratio. */
    @Test
    void differencesAreShiftedByHodgesAndLehmann() {
        MeasureReview review = judge(Nights.HOT, Nights.before(POOR), Nights.after(GOOD));
        assertThat(review.shift()).hasValueCloseTo(RankSum.of(GOOD, POOR, .95).shift(), within(1e-12));
    }

    @Test
    void noDifferenceSaysHowLargeItMayStillBe() {
        MeasureReview review =
                judge(Nights.FWHM, Nights.before(POOR), Nights.after(3.1, 3.5, 3.3, 3.65, 3.15, 3.45, 3.05, 3.4));
        assertThat(review.verdict()).isEqualTo(Verdict.NO_DIFFERENCE);
        assertThat(review.why())
                .startsWith("No difference seen over 8 nights before and 8 after; FWHM may still have fallen by up to ")
                .contains(" arcsec or risen by up to ");
        assertThat(review.low().orElseThrow()).isNegative();
        assertThat(review.high().orElseThrow()).isPositive();
    }

    @Test
    void threeNightsASideAreTooFewWhateverTheySay() {
        MeasureReview review = judge(Nights.FWHM, Nights.before(3.4, 3.5, 3.6), Nights.after(1.4, 1.5, 1.6));
        assertThat(review.verdict()).isEqualTo(Verdict.TOO_FEW);
        assertThat(review.adjustedP()).isEmpty();
        assertThat(review.coverage()).hasValueCloseTo(0.9, within(1e-12));
        Wanted wanted = review.grounds().wanted().orElseThrow();
        assertThat(wanted.before()).isEqualTo(wanted.after()).isPositive();
        assertThat(wanted.share()).isEqualTo(0.2);
        assertThat(review.why())
                .isEqualTo(
                        "Too few to tell a change from chance: 3 nights before and 3 after; 1 more on each side would"
                                + " most likely show a change of 20 %.");
    }

    @Test
    void oneNightHasNoInterval() {
        MeasureReview review = judge(Nights.FWHM, Nights.before(3.4), Nights.after(2.4));
        assertThat(review.verdict()).isEqualTo(Verdict.TOO_FEW);
        assertThat(review.shift()).hasValueCloseTo(-1.0, within(1e-9));
        assertThat(review.low()).isEmpty();
        assertThat(review.p()).isEmpty();
        assertThat(review.why()).endsWith("3 more on each side are the fewest that could tell.");
    }

    @Test
    void aSideWithoutNightsSaysWhich() {
        MeasureReview review = judge(Nights.FWHM, Nights.before(POOR), List.of());
        assertThat(review.verdict()).isEqualTo(Verdict.TOO_FEW);
        assertThat(review.shift()).isEmpty();
        assertThat(review.why()).isEqualTo("No night after to compare with.");
    }

    @Test
    void whatIsNotKnownOfTheSkyIsSaid() {
        Measure raw = Nights.FWHM.following(Influence.AIRMASS);
        List<NightValue> before =
                Nights.before(POOR).stream().map(Nights::withoutAirmass).toList();
        MeasureReview review = judge(raw, before, Nights.after(GOOD));
        assertThat(review.verdict()).isEqualTo(Verdict.BETTER);
        assertThat(review.grounds().unknown()).containsExactly(Influence.AIRMASS);
        assertThat(review.why()).contains("8 nights before and 8 after, airmass not known;");
    }

    @Test
    void severalMeasuresCorrectOneAnother() {
        double[] close = {3.0, 2.8, 3.3, 2.9, 3.1, 2.7, 3.2, 3.05};
        MeasureNights primary = new MeasureNights(Nights.FWHM, true, Nights.before(POOR), Nights.after(close));
        MeasureNights other = new MeasureNights(Nights.HOT, false, Nights.before(POOR), Nights.after(close));
        List<MeasureReview> alone = Judgement.of(RIG, List.of(primary));
        List<MeasureReview> three = Judgement.of(RIG, List.of(other, primary, other));
        assertThat(alone.get(0).verdict()).isEqualTo(Verdict.BETTER);
        assertThat(three).extracting(r -> r.nights().measure().id()).containsExactly("hotPixels", "fwhm", "hotPixels");
        assertThat(three.get(1).adjustedP())
                .hasValueCloseTo(2 * alone.get(0).p().orElseThrow(), within(1e-12));
        assertThat(three.get(0).adjustedP().orElseThrow())
                .isGreaterThan(three.get(0).p().orElseThrow());
    }

    /** Targets differ by a factor of ten, the change takes a tenth: only pairs can see it. */
    @Test
    void sameTargetsArePairs() {
        double[] before =
                IntStream.range(0, 8).mapToDouble(i -> Math.pow(10, i / 8.0)).toArray();
        double[] noise = new SplittableRandom(5).doubles(8, -.02, .02).toArray();
        double[] after = IntStream.range(0, 8)
                .mapToDouble(i -> before[i] * (0.9 + noise[i]))
                .toArray();
        List<NightValue> again = Nights.after(after).stream()
                .map(n -> Nights.on(n, n.target().substring(1)))
                .toList();
        MeasureReview review = judge(Nights.BACKGROUND, Nights.before(before), again);
        assertThat(review.verdict()).isEqualTo(Verdict.BETTER);
        assertThat(review.grounds().pairs()).isEqualTo(8);
        assertThat(review.p()).hasValueCloseTo(2 / 256.0, within(1e-12));
        assertThat(RankSum.of(before, after, .95).p()).isGreaterThan(0.5);
    }

    @Test
    void theSameNightOnBothSidesIsAPair() {
        List<NightValue> before = Nights.before(POOR);
        List<NightValue> after =
                before.stream().map(n -> Nights.on(n, "other " + n.target())).toList();
        assertThat(judge(Nights.FWHM, before, after).grounds().pairs()).isEqualTo(8);
    }

    @Test
    void entriesOfOneNightCountOnce() {
        List<NightValue> before = new java.util.ArrayList<>(Nights.before(POOR));
        before.addAll(before.stream().map(n -> Nights.through(n, "R")).toList());
        MeasureReview review = judge(Nights.FWHM, before, Nights.after(GOOD));
        assertThat(review.grounds().nightsBefore()).isEqualTo(8);
        assertThat(review.p()).hasValueCloseTo(2 / 12870.0, within(1e-12));
    }

    @Test
    void aNegativeValueIsComparedByDifference() {
        double[] crossing = DoubleStream.of(POOR).map(v -> v - 3.3).toArray();
        MeasureReview review = judge(Nights.FWHM, Nights.before(crossing), Nights.after(GOOD));
        assertThat(review.shift())
                .hasValueCloseTo(RankSum.of(GOOD, crossing, .95).shift(), within(1e-12));
    }

    private static MeasureReview judge(Measure measure, List<NightValue> before, List<NightValue> after) {
        return Judgement.of(RIG, List.of(Nights.of(measure, before, after))).get(0);
    }
}
