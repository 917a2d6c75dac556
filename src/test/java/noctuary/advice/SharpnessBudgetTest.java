package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.measure.Elongation;
import noctuary.rig.Optics;
import org.junit.jupiter.api.Test;

class SharpnessBudgetTest {
    /** Airy 1.45919, seeing 2.0, guiding 1.413 and a pixel of 1.3849 arcsec make 3.00201 in squares, by hand. */
    @Test
    void whatWasPutInComesOut() {
        double own = Math.sqrt(1.45919 * 1.45919 + 4 + 1.413 * 1.413);
        assertThat(own).isCloseTo(2.85058, within(1e-4));
        Budget budget = SharpnessBudget.of(sharpness(own, 1.3849, 1.413 / 1.665109, 1));
        assertThat(budget.total()).isCloseTo(3.00201, within(1e-4));
        assertThat(budget.term("seeing").orElseThrow().amount().getAsDouble()).isCloseTo(2, within(1e-4));
        double shares = budget.terms().stream()
                .mapToDouble(t -> budget.share(t).orElse(0))
                .sum();
        assertThat(shares).isCloseTo(1, within(1e-9));
        assertThat(budget.terms().get(0).id()).isEqualTo("seeing");
    }

    /** 0.5 and 0.4 arcsec RMS on two axes: 1.6651 x 0.640312; 2.717860 with 2.5 arcsec of seeing, by hand. */
    @Test
    void roundGuidingErrorsWidenByTheRootOfBothAxes() {
        double guiding = Sharpness.GUIDING_FWHM * Math.hypot(0.5, 0.4);
        assertThat(Math.hypot(2.5, guiding)).isCloseTo(2.717860, within(1e-5));
    }

    /** A round star of 2.671559 drawn out to 2.763385 arcsec: its common ellipticity gives the missing square back. */
    @Test
    void theStarsTellHowFarTheyWereDrawnOut() {
        double along = 2.763385;
        double across = 2.671559;
        Elongation e = new Elongation(1 - across / along, 0, 0);
        assertThat(e.ellipticity()).isCloseTo(0.033229, within(1e-5));
        Sharpness s = with(Math.sqrt(along * across), OptionalDouble.empty(), Optional.of(e));
        double round = Math.sqrt(along * across - Math.pow(s.trailArcsec().getAsDouble(), 2));
        assertThat(round).isCloseTo(across, within(1e-9));
    }

    @Test
    void unknownTermsAreNamedAndNotGuessed() {
        Budget budget = SharpnessBudget.of(with(3, OptionalDouble.empty(), Optional.empty()));
        assertThat(budget.terms().stream().filter(t -> t.amount().isEmpty()).map(Term::id))
                .containsExactlyInAnyOrder("diffraction", "pixel", "guiding", "focus-drift", "corners");
        assertThat(budget.term("seeing").orElseThrow().how()).contains("and with it what is not known", "guiding");
    }

    @Test
    void termsLargerThanTheWidthLeaveNoSeeing() {
        Budget budget = SharpnessBudget.of(sharpness(2, 1, 3, 1));
        assertThat(budget.term("seeing").orElseThrow().amount()).isEmpty();
        assertThat(SharpnessBudget.seeingAtZenith(sharpness(2, 1, 3, 1))).isEmpty();
    }

    /** X^0.6 at airmass 2 is 1.51572 (Roddier 1981). */
    @Test
    void seeingIsBroughtToTheZenith() {
        Sharpness low = sharpness(3, 1, 0.4, 2);
        double here =
                SharpnessBudget.of(low).term("seeing").orElseThrow().amount().getAsDouble();
        assertThat(here / SharpnessBudget.seeingAtZenith(low).getAsDouble()).isCloseTo(1.51572, within(1e-5));
    }

    @Test
    void evenGuidingOfHalfAnArcsecondDoesNotStandOut() {
        assertThat(SharpnessLimits.of(sharpness(3, 1, 0.5, 1.1), new Usual(new double[0])))
                .noneMatch(Limit::standsOut);
    }

    @Test
    void alikeToAllCornersIsSpacingAndAcrossTheFieldIsTilt() {
        Corners grown = new Corners(300, 2.5, 0.6, 0.05, 0.02, 0.05, 10, 0, 0.05, Double.NaN);
        assertThat(ids(CornerLimits.of(grown, OptionalDouble.of(-1.19)))).containsExactly("limit-spacing");
        assertThat(CornerLimits.of(grown, OptionalDouble.of(-1.19))
                        .get(0)
                        .finding()
                        .evidence())
                .contains("by its parts the train is 1.19 mm too short");
        Corners leaning = new Corners(300, 2.5, 0.05, 0.05, 1.2, 0.06, 170, 0, 0.05, Double.NaN);
        List<Limit> tilt = CornerLimits.of(leaning, OptionalDouble.empty());
        assertThat(ids(tilt)).containsExactly("limit-tilt");
        assertThat(tilt.get(0).finding().text()).contains("towards the left");
    }

    private static List<String> ids(List<Limit> limits) {
        return limits.stream().map(limit -> limit.finding().id()).toList();
    }

    private static Sharpness sharpness(double own, double scale, double guidingRms, double airmass) {
        return new Sharpness(
                own,
                200,
                OptionalDouble.of(scale),
                OptionalDouble.of(Optics.airyFwhmArcsec(550, 80)),
                OptionalDouble.of(guidingRms),
                Optional.empty(),
                true,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(airmass),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Sharpness with(double own, OptionalDouble guidingRms, Optional<Elongation> trail) {
        OptionalDouble absent = OptionalDouble.empty();
        return new Sharpness(
                own,
                200,
                absent,
                absent,
                guidingRms,
                trail,
                false,
                Optional.empty(),
                Optional.empty(),
                absent,
                absent,
                absent);
    }
}
