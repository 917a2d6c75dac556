package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import noctuary.demo.TruthTable;
import noctuary.entry.Journal;
import noctuary.measure.EntrySheet;
import noctuary.measure.EntrySheets;
import noctuary.measure.MeasuredFiles;
import noctuary.measure.RigSheets;
import noctuary.measure.VersionSheets;
import noctuary.stats.Robust;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demo journal reviewed, against what its simulator planted ({@code truth.csv}). */
class DemoReviewTest {
    private static final List<Map<String, String>> TRUTH = TruthTable.read();

    private static Reviews reviews;

    @BeforeAll
    static void review() {
        Journal journal = Journal.read(Path.of("").toAbsolutePath());
        MeasuredFiles files = new MeasuredFiles(journal.root().resolve(".noctuary"));
        EntrySheets sheets = new EntrySheets(journal, files::of);
        List<EntrySheet> entries = journal.entries().stream().map(sheets::of).toList();
        VersionSheets versions = new VersionSheets(files, journal.root().resolve(".noctuary"));
        reviews = Reviews.of(journal, entries, RigSheets.of(journal, entries), sheet -> versions.of(sheet.entry()));
    }

    private static Map<String, MeasureReview> measures(Review review) {
        return review.measures().stream()
                .collect(Collectors.toMap(m -> m.nights().measure().id(), Function.identity()));
    }

    /** Middle of the planted values of a column over the nights of a side, each the middle of its frames. */
    private static double planted(Side side, String column) {
        return Robust.median(side.entries().stream()
                .map(slug -> TRUTH.stream()
                        .filter(row -> row.get("slug").equals(slug))
                        .mapToDouble(row -> Double.parseDouble(row.get(column)))
                        .toArray())
                .filter(values -> values.length > 0)
                .mapToDouble(Robust::median)
                .toArray());
    }

    @Test
    void airmassIsThatOfTheSimulator() {
        reviews.all().stream()
                .flatMap(r -> r.change().after().nights().stream())
                .filter(n -> n.files().size() == 1 && n.stacked())
                .forEach(n -> {
                    double airmass = Double.parseDouble(TRUTH.stream()
                            .filter(row -> row.get("slug").equals(n.slug())
                                    && row.get("kind").equals("stack"))
                            .findFirst()
                            .orElseThrow()
                            .get("airmass"));
                    assertThat(n.sky().airmass().getAsDouble())
                            .as(n.slug() + ": the stack's gaps are not known to us")
                            .isCloseTo(airmass, within(0.05 * airmass));
                });
    }

    @Test
    void theLongTubeIsSharperAsPlanted() {
        Review review = reviews.rigs("wren", "heron");
        assertThat(reviews.around("rig-heron").orElseThrow().verdict()).hasValue(Verdict.BETTER);
        MeasureReview width = measures(review).get("fwhmArcsec");
        double before = planted(review.change().before(), "fwhm_arcsec");
        double after = planted(review.change().after(), "fwhm_arcsec");
        assertThat(review.verdict()).hasValue(Verdict.BETTER);
        assertThat(width.before().getAsDouble()).isCloseTo(before, within(0.05 * before));
        assertThat(after - before)
                .isBetween(width.low().getAsDouble(), width.high().getAsDouble());
    }

    @Test
    void guidingIsBetterWithTheLongTubeAsTyped() {
        Review review = reviews.rigs("wren", "heron");
        assertThat(planted(review.change().after(), "guiding_rms_arcsec"))
                .isLessThan(planted(review.change().before(), "guiding_rms_arcsec"));
        assertThat(measures(review).get("guidingRmsArcsec").verdict()).isEqualTo(Verdict.BETTER);
    }

    @Test
    void theStarsShowTheScaleThatArithmeticForetold() {
        Foretold scale = reviews.around("rig-heron").orElseThrow().foretold().get(0);
        assertThat(scale.shown().getAsDouble())
                .isCloseTo(
                        scale.foretold().getAsDouble(),
                        within(0.001 * scale.foretold().getAsDouble()));
    }

    /** In May the corrector was not screwed home: planted as 1.026 times the focal length. */
    @Test
    void theLooseCorrectorShowsInTheScaleOfItsNight() {
        DepthPair may = reviews.around("rig-heron").orElseThrow().pairs().stream()
                .filter(p -> p.after().slug().equals("2025-05-24-m51"))
                .findFirst()
                .orElseThrow();
        assertThat(may.scaleRatio()).isCloseTo(1.33170 / 1.026 / 2.01430, within(0.001));
    }

    @Test
    void theSpacerLowersTheCornersAndTheShiftIsThePlantedOne() {
        Review review = reviews.around("rig-heron-2025-09-20").orElseThrow();
        MeasureReview corners = review.primary().orElseThrow();
        assertThat(corners.nights().measure().id()).isEqualTo("cornerExcessArcsec");
        assertThat(corners.nights().before()).hasSize(5);
        assertThat(corners.nights().after()).hasSize(5);
        assertThat(corners.shift().getAsDouble()).isNegative();
        assertThat(corners.verdict()).isEqualTo(Verdict.BETTER);
        double left = planted(review.change().after(), "corner_fwhm_px")
                - planted(review.change().after(), "fwhm_px");
        assertThat(corners.after().getAsDouble())
                .as("planted 0.86 of the way to the corner, 1.33 arcsec a pixel")
                .isCloseTo(1.33170 * left, within(0.1));
        assertThat(measures(review).get("fwhmArcsec").verdict())
                .as("the middle is not much different, as planted")
                .isNotIn(Verdict.BETTER, Verdict.WORSE);
    }

    /** Planted seeing is 2.2 to 2.4 arcsec on the ridge, 2.3 to 2.9 on the terrace: too small a gain for eight nights. */
    @Test
    void threeNightsOnTheRidgeDoNotMakeItsAirBetter() {
        Review review = reviews.around("site-lumera").orElseThrow();
        assertThat(review.change().before().dates()).hasSize(5);
        assertThat(review.change().after().dates()).hasSize(3);
        assertThat(review.verdict().orElseThrow()).isIn(Verdict.NO_DIFFERENCE, Verdict.TOO_FEW);
        assertThat(review.test().orElseThrow().sentence()).contains("nights either way");
    }

    /**
     * Single exposures through one filter are left of one night at each site, that of the terrace with another spacer, which
     * moves no light: too few for a verdict, yet the planted darkness shows. Planted 19.6 and 21.3 mag/arcsec²; in electrons
     * from the planted noise, 8.4 electrons a count, 3.6 electrons of readout, 1.3317 arcsec a pixel. The wings of M 27's
     * crowd count as noise: a fifth.
     */
    @Test
    void theDarkerSkyOfTheRidgeShows() {
        MeasureReview sky =
                measures(reviews.around("site-lumera").orElseThrow()).get("backgroundRate");
        double before = plantedRate("2025-08-22-m27", 120);
        double after = plantedRate("2026-02-13-m82", 300);
        assertThat(sky.nights().before()).extracting(NightValue::slug).containsExactly("2025-08-22-m27");
        assertThat(sky.nights().after()).extracting(NightValue::slug).containsExactly("2026-02-13-m82");
        assertThat(after / before).as("1.7 magnitudes").isCloseTo(Math.pow(10, -0.4 * 1.7), within(0.01));
        assertThat(sky.after().getAsDouble()).isCloseTo(after, within(0.08 * after));
        assertThat(sky.before().getAsDouble()).isBetween(before, 1.25 * before);
        assertThat(sky.verdict()).isEqualTo(Verdict.TOO_FEW);
        assertThat(sky.why()).contains("1 night before and 1 after");
    }

    private static double plantedRate(String slug, double seconds) {
        double noise = Robust.median(TRUTH.stream()
                .filter(row -> row.get("slug").equals(slug) && row.get("kind").equals("single"))
                .mapToDouble(row -> 8.4 * Double.parseDouble(row.get("noise")))
                .toArray());
        return (noise * noise - 3.6 * 3.6) / seconds / (1.33170 * 1.33170);
    }

    /** M 27 through L and NGC 6888 through H-alpha are on both sides of the spacer: two pairs, and no verdict. */
    @Test
    void depthIsComparedInPairsAndTwoAreTooFew() {
        Review review = reviews.around("rig-heron-2025-09-20").orElseThrow();
        MeasureReview depth = measures(review).get("depthMag");
        assertThat(depth.nights().before()).extracting(NightValue::value).containsOnly(0.0);
        assertThat(depth.nights().after()).hasSameSizeAs(depth.nights().before());
        assertThat(depth.grounds().pairs()).isEqualTo(depth.nights().after().size());
        assertThat(depth.verdict()).isEqualTo(Verdict.TOO_FEW);
        assertThat(reviews.around("rig-heron").orElseThrow().absent())
                .filteredOn(a -> a.measure().id().equals("depthMag"))
                .extracting(AbsentMeasure::why)
                .containsExactly("No target on both sides was taken through the same filter.");
    }

    /** Colour balance was left out of three entries only, each with another stretch than those with it. */
    @Test
    void colourBalanceIsConfoundedByTheOtherSteps() {
        Review review = reviews.around("choice-colour-balance").orElseThrow();
        assertThat(review.verdict()).hasValue(Verdict.CONFOUNDED);
        assertThat(review.why()).contains("do not overlap in other steps");
        assertThat(measures(review)).containsKeys("noiseRatio", "fwhmRatio", "faintStarsLostPercent");
    }

    @Test
    void twoNightsBeforeDitheringAreTooFew() {
        Review review = reviews.around("way-2024-10-05-m31").orElseThrow();
        assertThat(review.change().before().dates()).hasSize(2);
        assertThat(review.verdict()).hasValue(Verdict.TOO_FEW);
        assertThat(review.why()).contains("more before");
    }

    @Test
    void noiseThroughOtherFiltersIsConfounded() {
        MeasureReview noise =
                measures(reviews.around("rig-heron").orElseThrow()).get("noiseInAnHour");
        assertThat(noise.verdict()).isEqualTo(Verdict.CONFOUNDED);
        assertThat(noise.why()).contains("filter");
    }

    /** The tilt that the simulator gives the first rig is half again that of the second, on stars that are wider. */
    @Test
    void nothingIsCalledBetterOrWorseThatWasNotPlanted() {
        Set<String> planted = Set.of(
                "fwhmArcsec",
                "fwhmAirmassOneArcsec",
                "cornerExcessArcsec",
                "tiltArcsec",
                "curvatureArcsec",
                "guidingRmsArcsec");
        assertThat(reviews.all().stream()
                        .flatMap(review -> review.measures().stream())
                        .filter(m -> m.verdict() == Verdict.BETTER || m.verdict() == Verdict.WORSE)
                        .map(m -> m.nights().measure().id()))
                .isSubsetOf(planted);
    }
}
