package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class FamilyTest {
    /** Benjamini &amp; Hochberg (1995), the example of section 3.2 as quoted in scipy's documentation. */
    private static final double[] THROMBOLYSIS = {
        .0001, .0004, .0019, .0095, .0201, .0278, .0298, .0344, .0459, .3240, .4262, .5719, .6528, .7590, 1
    };

    @Test
    void fifteenComparisons() {
        double[] holm = Family.holm(THROMBOLYSIS);
        double[] rates = Family.benjaminiHochberg(THROMBOLYSIS);
        assertThat(Arrays.stream(holm).filter(p -> p <= .05).count()).isEqualTo(3);
        assertThat(Arrays.stream(rates).filter(p -> p <= .05).count()).isEqualTo(4);
        assertThat(holm[2]).isCloseTo(.0247, within(1e-12));
        assertThat(holm[3]).isCloseTo(.1140, within(1e-12));
        assertThat(rates[3]).isCloseTo(.035625, within(1e-12));
        assertThat(rates[4]).isCloseTo(.0603, within(1e-12));
    }

    /** Worked by hand. */
    @Test
    void orderOfTheQuestionsDoesNotMatter() {
        assertThat(Family.holm(.01, .04, .03, .005)).containsExactly(new double[] {.03, .06, .06, .02}, within(1e-12));
        assertThat(Family.benjaminiHochberg(.01, .04, .03, .005))
                .containsExactly(new double[] {.02, .04, .04, .02}, within(1e-12));
    }

    /** By hand: three of five reach .05 / 3; five reach no .05 / 5, and the last but one no .05 / 4. */
    @Test
    void questionsThatCannotBeAnsweredDoNotCount() {
        double[] smallest = {.001, .001, .016, .02, .04};
        assertThat(Family.testable(.05, smallest, ones(5))).containsExactly(true, true, true, false, false);
        assertThat(Family.testable(.05, new double[] {.04}, ones(1))).containsExactly(true);
        assertThat(Family.testable(.05, new double[] {.04, .04}, ones(2))).containsExactly(false, true);
        assertThat(Family.testable(.05, new double[] {.06, .06}, ones(2))).containsExactly(false, false);
    }

    /** By hand, weights 2, 1, 1: p / w in order .01, .02, .04, hence .02 · 4 / 2, then .02 · 2 / 1, then .04. */
    @Test
    void aQuestionNamedBeforehandCarriesMore() {
        assertThat(Family.holm(new double[] {.02, .04, .02}, new double[] {2, 1, 1}))
                .containsExactly(new double[] {.04, .04, .04}, within(1e-12));
        assertThat(Family.holm(new double[] {.03, .01, .02}, new double[] {2, 1, 1}))
                .containsExactly(new double[] {.045, .04, .045}, within(1e-12));
    }

    private static double[] ones(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }
}
