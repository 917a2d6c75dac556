package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import noctuary.measure.FrameDraft;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What nights tell of each measure, against planted frames and typed lines. */
class EvidenceTest {
    @TempDir
    private Path folder;

    private PlantedJournal journal;

    @BeforeEach
    void begin() {
        journal = new PlantedJournal(folder);
    }

    /** Frames of 206.2648 x 4.6 / 712.5 = 1.3317 arcsec a pixel. */
    private void frames(String slug, String night, double fwhmPx, double skyElectrons, double airmass) {
        journal.small().entry(slug, "target: M 51", "rig: heron", "site: terrace", "frames: ['*.fits']");
        for (int n = 0; n < 3; n++) {
            SkySimulator sky = new SkySimulator(200, 150, slug.hashCode() + n)
                    .sky(skyElectrons)
                    .camera(2, 5, 300, 65535)
                    .shape(StarShape.constant(fwhmPx, 0, 0, 3.5))
                    .stars(12, 25, 60, 30);
            journal.small()
                    .frame(
                            slug,
                            "f" + n + ".fits",
                            FrameDraft.of(sky.frame().plane())
                                    .card("EXPTIME", "120.0")
                                    .card("EGAIN", "2.0")
                                    .card("FILTER", "'L'")
                                    .card("AIRMASS", Double.toString(airmass))
                                    .card("DATE-OBS", String.format(Locale.ROOT, "'%sT22:%02d:00'", night, 5 * n)));
        }
    }

    private MeasureNights nights(String measure, String change) {
        return Evidence.of(journal.change(change), List.of()).measures().stream()
                .filter(m -> m.measure().id().equals(measure))
                .findFirst()
                .orElseThrow();
    }

    private String why(String measure, String change) {
        return Evidence.of(journal.change(change), List.of()).absent().stream()
                .filter(m -> m.measure().id().equals(measure))
                .findFirst()
                .orElseThrow()
                .why();
    }

    private NightValue after(String measure) {
        return nights(measure, "rig-heron-2025-08-01").after().get(0);
    }

    /** Truth planted by the simulator; rates and noises by hand from it. */
    @Test
    void aNightIsTheMedianOfItsFramesInPlantedUnits() {
        frames("a", "2025-06-10", 2.6, 900, 1.2);
        frames("b", "2025-09-10", 3.2, 400, 1.4);
        NightValue width = after("fwhmArcsec");
        assertThat(width.value()).isCloseTo(3.2 * 1.33170, within(0.03 * 3.2 * 1.33170));
        assertThat(width.frames()).isEqualTo(3);
        assertThat(width.airmass()).hasValue(1.4);
        assertThat(after("fwhmAirmassOneArcsec").value())
                .as("width / X^0.6")
                .isCloseTo(width.value() / Math.pow(1.4, 0.6), within(1e-9));
        assertThat(after("backgroundRate").value())
                .as("400 e in 120 s over 1.3317² square arcsec; the wings of stars add some percent to the noise")
                .isCloseTo(400 / 120.0 / (1.33170 * 1.33170), within(0.06 * 1.88));
        assertThat(after("noiseInAnHour").value())
                .as("√(400 + 5²) e over √(120 s · 3600 s), 1.3317 arcsec and π/4 · 0.15² m²")
                .isCloseTo(Math.sqrt(425) / Math.sqrt(120 * 3600.0) / 1.33170 / 0.0176715, within(0.04 * 1.33));
        assertThat(after("backgroundNoise").value()).isCloseTo(Math.sqrt(425) / 2, within(0.25));
    }

    @Test
    void framesWithoutATimeAreLeftOutAndCounted() {
        frames("a", "2025-06-10", 2.6, 900, 1.2);
        frames("b", "2025-09-10", 3.2, 400, 1.4);
        journal.small().frame("b", "timeless.fits", FrameDraft.stars(9, 4).card("EXPTIME", "120.0"));
        assertThat(after("fwhmArcsec").frames()).isEqualTo(3);
        assertThat(journal.reviews()
                        .around("rig-heron-2025-08-01")
                        .orElseThrow()
                        .leftOut())
                .containsExactly("b (1 frame)");
    }

    @Test
    void noiseInCountsComparesOnlyAlikeExposures() {
        frames("a", "2025-06-10", 2.6, 900, 1.2);
        frames("b", "2025-09-10", 3.2, 400, 1.4);
        journal.file("rigs/wren.md", "---", "name: Wren", "---");
        journal.night("2025-05-01", "wren", "terrace", "M 51", 0.8);
        assertThat(nights("backgroundNoise", "rig-heron-2025-08-01").before()).hasSize(1);
        assertThat(why("backgroundNoise", "rig-heron")).isEqualTo("There is no frame or stack (before).");
    }

    @Test
    void aRigWithoutPixelSizeHasNoWidthInArcsecAndSaysSo() {
        journal.file("rigs/heron.md", "---", "name: Heron", "in use: 2025-05-20 on", "---")
                .night("2025-05-01", "wren", "terrace", "M 51", 0.8);
        frames("a", "2025-06-10", 2.6, 900, 1.2);
        assertThat(why("fwhmArcsec", "rig-heron"))
                .contains("there is no frame or stack".substring(1), "the image scale is not known")
                .endsWith("(on either side).");
    }

    @Test
    void typedNightsTellGuidingAndWork() {
        journal.night("2025-01-10", "wren", "terrace", "M 42", 0.8, "lost: [{minutes: 20, cause: cloud}]")
                .night("2025-05-24", "heron", "terrace", "M 51", 0.6);
        MeasureNights guiding = nights("guidingRmsArcsec", "rig-heron");
        assertThat(guiding.before()).extracting(NightValue::value).containsExactly(0.8);
        assertThat(guiding.primary())
                .as("what decides while widths are not known")
                .isTrue();
        assertThat(nights("usedOfClearPercent", "rig-heron").before())
                .extracting(NightValue::value)
                .containsExactly(75.0);
        assertThat(nights("lostMinutes", "rig-heron").after())
                .as("none listed is none lost")
                .extracting(NightValue::value)
                .containsExactly(0.0);
        assertThat(nights("usedOfDarkPercent", "rig-heron").before().get(0).value())
                .as(
                        "an hour of 11.45 h: cos H = (sin -18° - sin φ sin δ) / (cos φ cos δ), φ 44.3°, δ -21.96° (Meeus 15)")
                .isCloseTo(100 / 11.45, within(0.05));
    }

    @Test
    void backgroundOfTwoRigsIsNotCompared() {
        journal.night("2025-01-10", "wren", "terrace", "M 42", 0.8)
                .night("2025-05-24", "heron", "terrace", "M 51", 0.6);
        assertThat(why("backgroundRate", "rig-heron")).contains("unlike amounts of light");
        assertThat(why("backgroundMagnitude", "rig-heron"))
                .contains("There is no zero point".substring(12), "ero point");
    }
}
