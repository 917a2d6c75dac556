package noctuary.effect;

import static noctuary.effect.PlantedSky.assertNear;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import noctuary.stats.Robust;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Steps of known strength before the stretch and after it, on three skies, one without and two with a nebula (6 and 40
 * times the noise): noise ratio within 5 %, change of width within 3 %. The truth is worked out in the test.
 */
class StepStrengthTest {
    private static final PlantedSky[] SKIES = {
        new PlantedSky(77, 196, 7, 0), new PlantedSky(5, 196, 7, 60), new PlantedSky(31, 196, 7, 400)
    };

    private static Effect effect(int sky, float[] linear) {
        return PlantedSky.effect(SKIES[sky].pixels(), Steps.stretch(linear, 40, 0.25));
    }

    private static void assertShare(Amount amount, double expected, double share) {
        assertNear(amount, expected, within(expected * share));
    }

    @ParameterizedTest
    @CsvSource({"0, 5", "1, 5", "2, 5", "0, 40", "1, 40", "2, 40", "0, 200", "1, 200", "2, 200"})
    void aStretch(int sky, double strength) {
        float[] origin = SKIES[sky].pixels();
        Effect effect = PlantedSky.effect(origin, Steps.stretch(origin, strength, 0.15));
        assertShare(effect.stretch().orElseThrow().strength(), strength, 0.02);
        assertShare(effect.noiseRatio(1), 1, 0.01);
        assertShare(effect.fwhmRatio(), 1, 0.01);
    }

    /** The curve's middle lies six times the noise below the sky. */
    @ParameterizedTest
    @CsvSource({"0, 20", "1, 20", "2, 20", "0, 100", "1, 100", "2, 100"})
    void aStretchFromBlack(int sky, double strength) {
        float[] origin = SKIES[sky].pixels();
        Effect effect = PlantedSky.effect(origin, Steps.fromBlack(origin, strength, 60));
        assertShare(effect.stretch().orElseThrow().strength(), strength, 0.02);
        assertShare(effect.noiseRatio(1), 1, 0.01);
        assertShare(effect.fwhmRatio(), 1, 0.01);
    }

    /**
     * White noise of means over n px is 1 / n; under a kernel k along both axes it is the mean of k's own products.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.7", "1, 0.7", "2, 0.7", "0, 1", "1, 1", "2, 1", "0, 1.5", "1, 1.5", "2, 1.5", "1, 2", "2, 2"})
    void gaussianSmoothing(int sky, double sigma) {
        Effect effect = effect(sky, Steps.gaussian(SKIES[sky].pixels(), sigma));
        for (int size : new int[] {1, 2, 4, 8}) {
            assertShare(effect.noiseRatio(size), size * Steps.meansLeft(sigma, size), 0.05);
        }
        assertShare(effect.blotchBefore(), 1, 0.05);
        assertShare(effect.blotchAfter(), 8 * Steps.meansLeft(sigma, 8) / Steps.left(sigma), 0.1);
        double wider = Steps.smoothedFwhm(PlantedSky.FWHM, PlantedSky.BETA, sigma) / PlantedSky.FWHM;
        assertShare(effect.fwhmRatio(), wider, 0.03);
    }

    /** Noise: standard error of a median of nine over that of one value, 1.22267 / 3 (order statistics). */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void medianSmoothing(int sky) {
        Effect effect = effect(sky, Steps.median3(SKIES[sky].pixels()));
        assertShare(effect.noiseRatio(1), 1.22267 / 3, 0.05);
        assertShare(effect.fwhmRatio(), WidthFit.inNoise(Steps::median3, middleSnr(SKIES[sky])), 0.03);
    }

    /** Of the stars whose widths are compared; a median widens the fainter more, so that the middle one has the median. */
    private static double middleSnr(PlantedSky sky) {
        return Robust.median(sky.stars().stream()
                .mapToDouble(star -> star[3])
                .filter(snr -> snr > 20)
                .toArray());
    }

    /** Width at half of the height; noise from the kernel's squares. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.3, 1", "1, 0.3, 1", "2, 0.3, 1", "0, 0.3, 2.5", "1, 0.3, 2.5", "2, 0.3, 2.5", "0, 0.8, 1.5",
        "1, 0.8, 1.5", "2, 0.8, 1.5", "0, 1.5, 1", "1, 1.5, 1", "2, 1.5, 1", "1, 0.8, 2.5", "2, 0.8, 2.5",
        "1, 1.5, 1.5", "2, 1.5, 1.5"
    })
    void sharpening(int sky, double amount, double sigma) {
        Effect effect = effect(sky, Steps.sharpen(SKIES[sky].pixels(), sigma, amount));
        assertShare(effect.noiseRatio(1), Steps.sharpenedNoise(sigma, amount), 0.05);
        double narrower = Steps.sharpenedFwhm(PlantedSky.FWHM, PlantedSky.BETA, sigma, amount) / PlantedSky.FWHM;
        assertShare(effect.fwhmRatio(), narrower, 0.03);
    }

    /** Nothing of a star's profile is left to fit a width to; the kernel's squares give the noise. */
    @ParameterizedTest
    @CsvSource({"0, 1.5, 2.5", "0, 3, 2", "2, 3, 2"})
    void veryStrongSharpening(int sky, double amount, double sigma) {
        Effect effect = effect(sky, Steps.sharpen(SKIES[sky].pixels(), sigma, amount));
        assertShare(effect.noiseRatio(1), Steps.sharpenedNoise(sigma, amount), 0.05);
        assertShare(effect.stretch().orElseThrow().strength(), 40, 0.02);
        assertThat(effect.fwhmRatio().value()).isEmpty();
        assertThat(effect.fwhmRatio().why()).contains("dark rings");
    }

    /** Steps by their names in {@link StepRow}, after the stretch; the truth by {@link StepTruth}. */
    @ParameterizedTest
    @CsvSource({"gaussian 1.5, 0", "gaussian 2.0, 2", "sharpen 0.8 at 1.5, 0"})
    void afterTheStretch(String step, int sky) {
        Chain chain = new Chain(Chain.Tone.asinh(), Chain.Order.AFTER, StepRow.named(step));
        Effect effect = chain.effect(SKIES[sky]);
        StepTruth truth = new StepTruth(chain, SKIES[sky]);
        assertShare(effect.noiseRatio(1), truth.noiseAndCut()[0], 0.05);
        assertShare(effect.noiseRatio(8), truth.noiseAndCut()[1], 0.05);
        assertShare(effect.fwhmRatio(), truth.fwhmRatio(), 0.03);
        assertShare(effect.stretch().orElseThrow().strength(), Chain.Tone.TOP, 0.02);
    }

    /** Widths of bright and of faint stars change by different shares under these; all else comes back. */
    @ParameterizedTest
    @CsvSource({"median 5, 0", "sharpen 1.5 at 1.0, 1"})
    void afterTheStretchWithoutOneWidth(String step, int sky) {
        Chain chain = new Chain(Chain.Tone.asinh(), Chain.Order.AFTER, StepRow.named(step));
        Effect effect = chain.effect(SKIES[sky]);
        double[] truth = new StepTruth(chain, SKIES[sky]).noiseAndCut();
        assertShare(effect.noiseRatio(1), truth[0], 0.05);
        assertShare(effect.noiseRatio(8), truth[1], 0.05);
        assertShare(effect.stretch().orElseThrow().strength(), Chain.Tone.TOP, 0.02);
        assertThat(effect.fwhmRatio().why()).contains("different shares");
    }

    /** A curve that is no asinh curve: the noise is held against the slope that the sky itself shows. */
    @ParameterizedTest
    @CsvSource({
        "sharpen 0.3 at 1.0, BEFORE",
        "sharpen 0.3 at 1.0, AFTER",
        "sharpen 0.8 at 1.5, BEFORE",
        "median 3, AFTER",
        "gaussian 1.5, AFTER",
        "gaussian 2.0, AFTER",
        "sharpen 1.5 at 2.5, BEFORE",
        "sharpen 3.0 at 2.0, AFTER"
    })
    void underAPower(String step, Chain.Order order) {
        Chain chain = new Chain(Chain.Tone.power(), order, StepRow.named(step));
        Effect effect = chain.effect(SKIES[0]);
        double[] truth = new StepTruth(chain, SKIES[0]).noiseAndCut();
        assertShare(effect.noiseRatio(1), truth[0], 0.05);
        assertShare(effect.noiseRatio(8), truth[1], 0.05);
    }

    /** Light that was smeared out of the stars is neither noise nor lost. */
    @ParameterizedTest
    @CsvSource({"BEFORE", "AFTER"})
    void heavySmoothing(Chain.Order order) {
        Chain chain = new Chain(Chain.Tone.asinh(), order, StepRow.named("gaussian 3.0"));
        Effect effect = chain.effect(SKIES[0]);
        double[] truth = new StepTruth(chain, SKIES[0]).noiseAndCut();
        assertShare(effect.noiseRatio(1), truth[0], 0.05);
        assertShare(effect.noiseRatio(8), truth[1], 0.05);
    }

    @ParameterizedTest
    @CsvSource({"gaussian 1.5", "gaussian 2.0", "median 5"})
    void starsOnANebulaAreSmearedNotLost(String step) {
        PlantedSky nebula = new PlantedSky(31, 64, 20, (x, y) -> 800 * PlantedSky.rippled(x, y, 0.1));
        Chain chain = new Chain(Chain.Tone.asinh(), Chain.Order.AFTER, StepRow.named(step));
        StarFates fates = chain.effect(nebula).fates().orElseThrow();
        assertThat(100.0 * fates.lost() / (fates.lost() + fates.kept()))
                .isCloseTo(new StepTruth(chain, nebula).lostPercent(), within(5.0));
    }

    private static final PlantedSky NEBULA = new PlantedSky(31, 64, 20, (x, y) -> 800 * PlantedSky.rippled(x, y, 0.1));
    private static final PlantedSky CROWDED = new PlantedSky(5, 1225, 7, 60);
    private static final Map<String, PlantedSky> NAMED = Map.of(
            "empty",
            SKIES[0],
            "faint",
            SKIES[1],
            "nebula",
            NEBULA,
            "crowded",
            CROWDED,
            "sharp",
            new PlantedSky(22, 256, 7, PlantedSky::faint, new PlantedSky.Seeing(2.2, 10)),
            "noisy",
            new PlantedSky(20, 196, 7, PlantedSky::faint, new PlantedSky.Seeing(3.6, 20)));

    /**
     * Where stars or faint light lie too close, stars are sharp, a stretch bends within the noise, and from a stretched
     * version to the next: right, or absent for that.
     */
    @ParameterizedTest
    @CsvSource({
        "gaussian 3.0, nebula, BEFORE, asinh",
        "gaussian 3.0, nebula, AFTER, asinh",
        "gaussian 3.0, crowded, BEFORE, asinh",
        "gaussian 3.0, crowded, AFTER, power",
        "gaussian 1.5, crowded, BEFORE, asinh",
        "gaussian 1.5, crowded, AFTER, power",
        "sharpen 0.8 at 1.5, crowded, AFTER, asinh",
        "median 5, crowded, AFTER, asinh",
        "gaussian 1.0, crowded, ALONE, power",
        "sharpen 0.8 at 1.5, empty, ALONE, asinh",
        "sharpen 0.8 at 1.5, empty, ALONE, power",
        "median 5, empty, AFTER, asinh",
        "sharpen 1.5 at 1.0, faint, AFTER, asinh",
        "gaussian 2.0, sharp, AFTER, asinh",
        "median 3, sharp, AFTER, asinh",
        "median 5, sharp, AFTER, power",
        "sharpen 1.5 at 1.0, sharp, BEFORE, asinh",
        "gaussian 3.0, noisy, BEFORE, power",
        "sharpen 1.5 at 2.5, noisy, BEFORE, power",
        "sharpen 1.5 at 2.5, noisy, AFTER, power"
    })
    void rightOrAbsent(String step, String name, Chain.Order order, String tone) {
        PlantedSky sky = NAMED.get(name);
        Chain.Tone stretch = tone.equals("asinh") ? Chain.Tone.asinh() : Chain.Tone.power();
        Chain chain = new Chain(stretch, order, StepRow.named(step));
        Effect effect = chain.effect(sky);
        StepTruth truth = new StepTruth(chain, sky);
        double[] noise = truth.noiseAndCut();
        String unfair = step.startsWith("sharpen") && name.equals("noisy")
                ? "cut to black"
                : "pass(es)? for noise|too close to each other";
        SoftAssertions all = new SoftAssertions();
        rightOrAbsent(all, "noise 1", effect.noiseRatio(1), noise[0], 0.05 * noise[0], unfair);
        rightOrAbsent(all, "noise 8", effect.noiseRatio(8), noise[1], 0.05 * noise[1], unfair);
        double wider = truth.fwhmRatio();
        String shapes = "too close to each other|different shares|no simple curve|dark rings";
        rightOrAbsent(all, "width", effect.fwhmRatio(), wider, 0.03 * wider, shapes);
        Amount lost = effect.fates()
                .map(f -> Amount.of(100.0 * f.lost() / (f.lost() + f.kept())))
                .orElse(Amount.absent(effect.whyNot()));
        rightOrAbsent(all, "lost", lost, truth.lostPercent(), 5, "half of their light|cut to black");
        all.assertAll();
    }

    /** Faint waves lie all over this sky, and smoothing leaves them; planted truth by definition ({@link StepTruth}). */
    @ParameterizedTest
    @CsvSource({
        "gaussian 1.5, BEFORE, asinh",
        "gaussian 1.5, AFTER, power",
        "gaussian 1.5, ALONE, asinh",
        "gaussian 3.0, AFTER, asinh",
        "median 3, ALONE, power",
        "median 5, AFTER, power",
        "sharpen 1.5 at 1.0, BEFORE, power"
    })
    void faintWavesAreNoNoise(String step, Chain.Order order, String tone) {
        Chain.Tone stretch = tone.equals("asinh") ? Chain.Tone.asinh() : Chain.Tone.power();
        Chain chain = new Chain(stretch, order, StepRow.named(step));
        Effect effect = chain.effect(NEBULA);
        double[] truth = new StepTruth(chain, NEBULA).noiseAndCut();
        assertShare(effect.noiseRatio(1), truth[0], 0.05);
        assertShare(effect.noiseRatio(8), truth[1], 0.05);
    }

    /** A bend within sharpened noise, under light that hides how much of it is cut: planted truth by definition. */
    @Test
    void blackUnderFaintLightIsNotTold() {
        Chain chain = new Chain(Chain.Tone.power(), Chain.Order.BEFORE, StepRow.named("sharpen 3.0 at 2.0"));
        Effect effect = chain.effect(NEBULA);
        assertShare(effect.noiseRatio(1), new StepTruth(chain, NEBULA).noiseAndCut()[0], 0.05);
        assertThat(effect.noiseRatio(8).why()).contains("faint light");
        assertThat(effect.backgroundCutPercent().why()).contains("faint light");
    }

    /** The same where the sky is empty. */
    @Test
    void blackUnderAnEmptySkyIs() {
        Chain chain = new Chain(Chain.Tone.power(), Chain.Order.BEFORE, StepRow.named("sharpen 3.0 at 2.0"));
        Effect effect = chain.effect(SKIES[0]);
        double[] truth = new StepTruth(chain, SKIES[0]).noiseAndCut();
        assertNear(effect.backgroundCutPercent(), truth[2], within(0.1));
        assertShare(effect.noiseRatio(1), truth[0], 0.05);
    }

    /** The slope of the stretch about the sky is not known well enough between close stars. */
    @Test
    void sharpeningBetweenCloseStarsUnderAPowerIsNotTold() {
        Chain chain = new Chain(Chain.Tone.power(), Chain.Order.BEFORE, StepRow.named("sharpen 0.8 at 1.5"));
        assertThat(chain.effect(CROWDED).noiseRatio(1).why()).contains("so close to each other");
    }

    private static void rightOrAbsent(
            SoftAssertions all, String what, Amount amount, double expected, double reach, String why) {
        if (amount.value().isPresent()) {
            all.assertThat(amount.value().getAsDouble()).as(what).isCloseTo(expected, within(reach));
        } else {
            all.assertThat(amount.why()).as(what).containsPattern(why);
        }
    }

    /** Steps that spare the sky between the stars leave its noise as it was, whatever becomes of the stars. */
    @ParameterizedTest
    @CsvSource({"smaller stars 1.0, 0", "stars left 0.3, 0"})
    void aStepOnStarsAlone(String step, int sky) {
        Effect effect = new Chain(Chain.Tone.asinh(), Chain.Order.AFTER, StepRow.named(step)).effect(SKIES[sky]);
        assertShare(effect.noiseRatio(1), 1, 0.01);
        assertShare(effect.noiseRatio(8), 1, 0.01);
    }

    @Test
    void aBroadHalo() {
        Effect effect = new Chain(Chain.Tone.asinh(), Chain.Order.AFTER, StepRow.named("halo 10 %")).effect(SKIES[0]);
        assertShare(effect.stretch().orElseThrow().strength(), Chain.Tone.TOP, 0.02);
        assertNear(effect.haloPercent(), 10, within(1.0));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void aStretchByAPower(int sky) {
        Effect effect = new Chain(Chain.Tone.power(), Chain.Order.AFTER, StepRow.named("nothing")).effect(SKIES[sky]);
        assertShare(effect.noiseRatio(1), 1, 0.01);
        assertShare(effect.fwhmRatio(), 1, 0.01);
        assertThat(effect.stretch().orElseThrow().strength().why()).contains("no asinh curve");
    }

    @ParameterizedTest
    @CsvSource({"gamma 1.4", "s curve", "eight bits"})
    void tones(String step) {
        Effect effect = new Chain(Chain.Tone.asinh(), Chain.Order.AFTER, StepRow.named(step)).effect(SKIES[1]);
        assertShare(effect.noiseRatio(1), 1, 0.01);
        assertShare(effect.fwhmRatio(), 1, 0.01);
    }

    @Test
    void theFitOfTheTestKnowsWhatAGaussianDoes() {
        double wider = Steps.smoothedFwhm(PlantedSky.FWHM, PlantedSky.BETA, 1) / PlantedSky.FWHM;
        assertThat(WidthFit.inNoise(o -> Steps.gaussian(o, 1), 150)).isCloseTo(wider, within(0.01 * wider));
    }
}
