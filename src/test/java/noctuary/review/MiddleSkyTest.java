package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import noctuary.entry.Journal;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sky over the frame in the middle of a night, at an instant for which astropy and PyEphem give the Moon. */
class MiddleSkyTest {
    @TempDir
    private Path folder;

    private SmallJournal journal(String... frontMatter) {
        SmallJournal journal = new SmallJournal(folder);
        journal.file("rigs/wren.md", "---", "name: Wren", "---");
        journal.file(
                "sites/greenwich.md",
                "---",
                "name: Greenwich",
                "latitude: 51.4778 deg",
                "longitude: 0 deg",
                "time zone: Europe/London",
                "---");
        journal.entry("m51", frontMatter);
        return journal;
    }

    private static FrameDraft frame(int seed, String taken) {
        SkySimulator sky = new SkySimulator(120, 90, seed)
                .sky(200)
                .camera(2, 5, 300, 65535)
                .shape(StarShape.constant(3, 0, 0, 3.5))
                .stars(9, 25, 60, 30);
        return FrameDraft.of(sky.frame().plane()).card("EXPTIME", "2.0").card("DATE-OBS", "'" + taken + "'");
    }

    /** 2025-06-21T00:00:00Z over Greenwich: Moon 25.9 % lit and 5.58 degrees below the horizon (see SunMoonTest). */
    @Test
    void itIsThatOfTheMiddleFrame() {
        SmallJournal journal = journal("target: M 51", "rig: wren", "site: greenwich", "frames: ['*.fits']");
        List<String> times = List.of("2025-06-20T22:00:00", "2025-06-20T23:59:59", "2025-06-21T02:30:00");
        for (int i = 0; i < times.size(); i++) {
            journal.frame("m51", "f" + i + ".fits", frame(i, times.get(i)));
        }
        Map<LocalDate, FrameSky> skies = MiddleSky.of(Journal.read(journal.root()), journal.sheet("m51"));
        assertThat(skies).containsOnlyKeys(LocalDate.of(2025, 6, 20));
        FrameSky sky = skies.values().iterator().next();
        assertThat(sky.moonLit().getAsDouble()).isCloseTo(0.259, within(0.0015));
        assertThat(sky.moonAltitudeDeg().getAsDouble()).isCloseTo(-5.5819, within(0.02));
        assertThat(sky.moonMagnitudes().getAsDouble()).isZero();
    }

    @Test
    void withoutFramesThereIsNone() {
        SmallJournal journal = journal(
                "target: M 51",
                "rig: wren",
                "site: greenwich",
                "night: 2025-06-20",
                "exposure: [{count: 4, seconds: 60}]");
        assertThat(MiddleSky.of(Journal.read(journal.root()), journal.sheet("m51")))
                .isEmpty();
    }
}
