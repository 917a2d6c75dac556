package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ConfoundingTest {
    private static final double[] POOR = {3.4, 3.1, 3.7, 3.3, 3.5, 3.0, 3.6, 3.2};
    private static final double[] GOOD = {2.7, 2.5, 2.9, 2.6, 2.8, 2.45, 2.95, 2.55};

    @Test
    void anotherSiteStandsInTheWayOfARig() {
        List<NightValue> after =
                Nights.after(GOOD).stream().map(n -> Nights.at(n, "lumera")).toList();
        MeasureReview review = judge(Influence.RIG, Nights.FWHM, Nights.before(POOR), after);
        assertThat(review.verdict()).isEqualTo(Verdict.CONFOUNDED);
        assertThat(review.grounds().against()).containsExactly(Influence.SITE);
        assertThat(review.low()).isEmpty();
        assertThat(review.grounds().plain()).isPresent();
        assertThat(review.why())
                .isEqualTo("Cannot be put down to this change: 8 nights before and 8 after do not overlap in site.");
    }

    @Test
    void anotherSiteDoesNotStandInTheWayOfItself() {
        List<NightValue> after =
                Nights.after(GOOD).stream().map(n -> Nights.at(n, "lumera")).toList();
        assertThat(judge(Influence.SITE, Nights.FWHM, Nights.before(POOR), after)
                        .verdict())
                .isEqualTo(Verdict.BETTER);
    }

    @Test
    void nightsAtASiteOfOneSideOnlyAreSetAside() {
        List<NightValue> after = new ArrayList<>(Nights.after(GOOD));
        after.add(Nights.at(Nights.night(LocalDate.of(2025, 4, 20), "M9", 9), "lumera"));
        MeasureReview review = judge(Influence.RIG, Nights.FWHM, Nights.before(POOR), after);
        assertThat(review.verdict()).isEqualTo(Verdict.BETTER);
        assertThat(review.grounds().setAside()).isEqualTo(1);
        assertThat(review.grounds().nightsAfter()).isEqualTo(8);
    }

    @Test
    void airmassApartStandsInTheWayOfWhatFeelsIt() {
        List<NightValue> before =
                Nights.before(POOR).stream().map(n -> Nights.under(n, 2.1, 0)).toList();
        List<NightValue> after =
                Nights.after(GOOD).stream().map(n -> Nights.under(n, 1.2, 0)).toList();
        MeasureReview review = judge(Influence.RIG, Nights.FWHM, before, after);
        assertThat(review.verdict()).isEqualTo(Verdict.CONFOUNDED);
        assertThat(review.grounds().against()).containsExactly(Influence.AIRMASS);
        assertThat(judge(Influence.RIG, Nights.HOT, before, after).verdict()).isEqualTo(Verdict.BETTER);
    }

    @Test
    void aDifferenceOfAirmassThatDoesNotMatterStandsInNobodysWay() {
        List<NightValue> before =
                Nights.before(POOR).stream().map(n -> Nights.under(n, 1.20, 0)).toList();
        List<NightValue> after =
                Nights.after(GOOD).stream().map(n -> Nights.under(n, 1.24, 0)).toList();
        assertThat(judge(Influence.RIG, Nights.FWHM, before, after).verdict()).isEqualTo(Verdict.BETTER);
    }

    @Test
    void summerAgainstWinterIsNoComparison() {
        List<NightValue> after = Nights.from(LocalDate.of(2025, 7, 1), GOOD);
        assertThat(judge(Influence.RIG, Nights.FWHM, Nights.before(POOR), after)
                        .grounds()
                        .against())
                .containsExactly(Influence.SEASON);
        List<NightValue> nextWinter = Nights.from(LocalDate.of(2026, 1, 1), GOOD);
        assertThat(judge(Influence.RIG, Nights.FWHM, Nights.before(POOR), nextWinter)
                        .verdict())
                .isEqualTo(Verdict.BETTER);
    }

    @Test
    void twoTargetsAgainstTwoOthersAreTooFewTargets() {
        List<NightValue> before = onTwo(Nights.before(POOR), "M31", "M33");
        List<NightValue> after = onTwo(Nights.after(GOOD), "M81", "M101");
        assertThat(judge(Influence.RIG, Nights.BACKGROUND, before, after)
                        .grounds()
                        .against())
                .containsExactly(Influence.TARGET);
        assertThat(judge(Influence.RIG, Nights.FWHM, before, after).verdict()).isEqualTo(Verdict.BETTER);
    }

    /** Nothing changed but the Moon; the raw rise is large. */
    @Test
    void moonlightIsTakenOutOfTheBackground() {
        SplittableRandom random = new SplittableRandom(3);
        List<NightValue> before = moonlit(Nights.before(new double[10]), random, 0.2);
        List<NightValue> after = moonlit(Nights.after(new double[10]), random, 0.8);
        MeasureReview review = judge(Influence.RIG, Nights.BACKGROUND, before, after);
        assertThat(review.verdict()).isEqualTo(Verdict.NO_DIFFERENCE);
        assertThat(review.grounds().decides()).isTrue();
        assertThat(review.grounds().adjustedFor()).containsExactly(Influence.MOON);
        assertThat(review.grounds().plain().orElseThrow().share().orElseThrow()).isGreaterThan(0.2);
        assertThat(review.shift().orElseThrow() / review.before().orElseThrow()).isCloseTo(0, within(0.15));
        assertThat(review.why()).contains("at equal Moon");
    }

    /** Eight nights afford one condition: raw FWHM follows airmass, but Moon and airmass are too much. */
    @Test
    void conditionsThatTheNightsCannotTellApartLeaveTooFew() {
        Measure both = new Measure("b", "B", "", true)
                .byShare()
                .following(Influence.MOON, Influence.AIRMASS)
                .throughTheSky();
        SplittableRandom random = new SplittableRandom(4);
        List<NightValue> before = moonlit(Nights.before(new double[4]), random, 0.5);
        List<NightValue> after = moonlit(Nights.after(new double[4]), random, 0.5);
        MeasureReview review = judge(Influence.RIG, both, before, after);
        assertThat(review.verdict()).isEqualTo(Verdict.TOO_FEW);
        assertThat(review.low()).isEmpty();
    }

    private static List<NightValue> moonlit(List<NightValue> nights, SplittableRandom random, double share) {
        return nights.stream()
                .map(n -> {
                    double moon = random.nextDouble() < share ? 0.5 + random.nextDouble() : 0;
                    double airmass = 1 + 0.5 * random.nextDouble();
                    double value = Math.pow(10, 0.4 * moon) * Math.exp(0.05 * random.nextGaussian());
                    return Nights.under(Nights.night(n.night(), n.target(), value), airmass, moon);
                })
                .toList();
    }

    private static List<NightValue> onTwo(List<NightValue> nights, String even, String odd) {
        return IntStream.range(0, nights.size())
                .mapToObj(i -> Nights.on(nights.get(i), i % 2 == 0 ? even : odd))
                .toList();
    }

    private static MeasureReview judge(
            Influence changed, Measure measure, List<NightValue> before, List<NightValue> after) {
        return Judgement.of(Set.of(changed), List.of(Nights.of(measure, before, after)))
                .get(0);
    }
}
