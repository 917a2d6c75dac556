package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.List;
import noctuary.entry.Journal;
import noctuary.measure.EntrySheets;
import noctuary.measure.FrameDraft;
import noctuary.measure.Meter;
import noctuary.measure.RigSheets;
import noctuary.measure.SmallJournal;
import noctuary.stars.sim.SkySimulator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starless frames of 400 electrons of sky, read noise 5 e, 1.5 e/ADU, 80 s. */
class DepthTest {
    /** The noise of 30,000 pixels from their median deviation is good to 0.7 %, its square to 1.4 %; three of these. */
    private static final double SURE_PERCENT = 4.2;

    @TempDir
    Path folder;

    private SmallJournal journal;

    @BeforeEach
    void threeFrames() {
        journal = new SmallJournal(folder);
        journal.file(
                "rigs/heron.md",
                "---",
                "name: Heron",
                "optics: {aperture: 150 mm, focal length: 750 mm}",
                "camera: {pixel: 3.3 µm, width: 200, height: 150, read noise: 5 e, gain: 1.5 e/ADU}",
                "---");
        journal.entry("night", "rig: heron", "frames: [\"*.fits\"]");
        for (int n = 0; n < 3; n++) {
            journal.frame("night", "l" + n + ".fits", frame(400, n).card("IMAGETYP", "'LIGHT'"));
        }
    }

    @Test
    void theSkyIsToldByItsNoiseWithoutKnowingThePedestal() {
        Depth depth = depth();
        assertThat(depth.lightE().getAsDouble()).isCloseTo(400, withinPercentage(SURE_PERCENT));
        assertThat(depth.backgroundRate().getAsDouble()).isCloseTo(5, withinPercentage(SURE_PERCENT));
        Budget budget = DepthBudget.of(depth).orElseThrow();
        assertThat(budget.terms().get(0).id()).isEqualTo("sky");
        assertThat(budget.term("read-noise").orElseThrow().amount().getAsDouble())
                .isEqualTo(5);
        assertThat(budget.term("dark").orElseThrow().amount()).isEmpty();
    }

    @Test
    void darkFramesOfTheSameExposureTellTheDarkCurrent() {
        journal.frame("night", "d0.fits", frame(100, 7).card("IMAGETYP", "'DARK'"));
        Depth depth = depth();
        assertThat(depth.darkE().getAsDouble()).isCloseTo(100, withinPercentage(2 * SURE_PERCENT));
        assertThat(depth.lightE().getAsDouble()).isCloseTo(300, withinPercentage(3 * SURE_PERCENT));
        assertThat(depth.levelRate().getAsDouble())
                .as("300 e above the dark in 80 s")
                .isCloseTo(3.75, withinPercentage(0.5));
    }

    /** 5 e of reading in a variance of 425 e²: 1 - sqrt(400 / 425) = 3 % of the noise. */
    @Test
    void longEnoughExposuresDoNotStandOut() {
        Limit reading = DepthLimits.of(depth(), new Usual(new double[0]), new Usual(new double[0]))
                .get(0);
        assertThat(reading.loss()).isCloseTo(0.030, within(0.002));
        assertThat(reading.standsOut()).isFalse();
    }

    private static FrameDraft frame(double electrons, long seed) {
        SkySimulator sky = new SkySimulator(200, 150, seed).sky(electrons).camera(1.5, 5, 300, 60000);
        return FrameDraft.of(sky.frame().plane())
                .card("EXPTIME", "80.0")
                .card("DATE-OBS", "'2025-05-02T22:0" + seed + ":00'");
    }

    private Depth depth() {
        Journal read = Journal.read(folder);
        var sheet = new EntrySheets(read, Meter::measure).of(read.entries().get(0));
        return DepthReader.read(EntryContext.of(sheet, read, RigSheets.of(read, List.of(sheet))));
    }
}
