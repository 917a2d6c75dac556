package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import noctuary.keep.Memo;
import noctuary.measure.FrameDraft;
import noctuary.stars.sim.Dice;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same stars planted in two images with known light, sky, scale and turn. */
class DepthsTest {
    private static final int STARS = 160;

    @TempDir
    private Path folder;

    private PlantedJournal journal;

    @BeforeEach
    void begin() {
        journal = new PlantedJournal(folder);
    }

    /** @param scale pixels an image pixel of the first stands for */
    private void image(String slug, String night, double light, double sky, double seconds, double scale, double turn) {
        journal.small().entry(slug, "target: M 51", "rig: heron", "site: terrace", "frames: ['*.fits']");
        SkySimulator simulator = new SkySimulator(500, 400, slug.hashCode())
                .sky(sky)
                .camera(2, 5, 300, 65535)
                .shape(StarShape.constant(3, 0, 0, 3.5));
        Dice dice = new Dice(7);
        double cos = Math.cos(Math.toRadians(turn)) * scale;
        double sin = Math.sin(Math.toRadians(turn)) * scale;
        for (int star = 0; star < STARS; star++) {
            double x = (star % 16 + dice.uniform(0.2, 0.8)) * 25 - 200;
            double y = (star / 16 + dice.uniform(0.2, 0.8)) * 30 - 150;
            double electrons = 3000 * Math.pow(20, dice.uniform(0, 1)) * light;
            simulator.light(250 + x * cos - y * sin, 200 + x * sin + y * cos, electrons);
        }
        journal.small()
                .frame(
                        slug,
                        "f.fits",
                        FrameDraft.of(simulator.frame().plane())
                                .card("EXPTIME", Double.toString(seconds))
                                .card("EGAIN", "2.0")
                                .card("FILTER", "'L'")
                                .card("DATE-OBS", "'" + night + "T22:00:00'"));
    }

    private DepthPair pair() {
        List<DepthPair> pairs = Depths.of(journal.change("rig-heron-2025-08-01"), Memo.NONE);
        assertThat(pairs).hasSize(1);
        return pairs.get(0);
    }

    @Test
    void throughputScaleAndTurnAreThosePlanted() {
        image("a", "2025-06-10", 1, 400, 120, 1, 0);
        image("b", "2025-09-10", 1.4, 400, 60, 0.8, 30);
        DepthPair pair = pair();
        assertThat(pair.target()).isEqualTo("M 51");
        assertThat(pair.throughput().getAsDouble())
                .as("1.4 times the electrons in half the time")
                .isCloseTo(2.8, within(0.06));
        assertThat(pair.scaleRatio()).as("fewer pixels for the same sky").isCloseTo(1.25, within(0.002));
        assertThat(pair.rotationDeg()).isCloseTo(30, within(0.1));
        assertThat(pair.sameFilter()).isTrue();
    }

    /** Background-limited: the limit is as √sky over light, and as the root of the exposure. */
    @Test
    void theLimitFollowsSkyLightAndExposure() {
        image("a", "2025-06-10", 1, 1000, 120, 1, 0);
        image("b", "2025-09-10", 1, 4000, 120, 1, 0);
        double brighterSky = -2.5 * Math.log10(Math.sqrt(4025 / 1025.0));
        assertThat(pair().deeperMag().getAsDouble()).isCloseTo(brighterSky, within(0.08));
    }

    @Test
    void fourTimesTheExposureIsNoGainAtEqualExposure() {
        image("a", "2025-06-10", 0.5, 1000, 120, 1, 0);
        image("b", "2025-09-10", 2, 4000, 480, 1, 0);
        assertThat(pair().deeperMag().getAsDouble()).isCloseTo(0, within(0.08));
    }

    @Test
    void fieldsThatDoNotMatchMakeNoPair() {
        image("a", "2025-06-10", 1, 400, 120, 1, 0);
        journal.small()
                .entry("b", "target: M 51", "rig: heron", "site: terrace", "frames: ['*.fits']")
                .frame("b", "f.fits", FrameDraft.stars(3, 5).card("DATE-OBS", "'2025-09-10T22:00:00'"));
        assertThat(Depths.of(journal.change("rig-heron-2025-08-01"), Memo.NONE)).isEmpty();
    }
}
