package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import noctuary.stars.sim.Dice;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Eight frames of 400 e of sky, read noise 6 e, 1.5 e/ADU: a noise of sqrt(436) / 1.5 = 13.92 counts each. */
class NoiseCoursesTest {
    private static final int SIZE = 320;
    private static final double NOISE = Math.sqrt(400 + 36) / 1.5;

    @TempDir
    Path folder;

    @Test
    void whatAveragesOutFallsWithTheRootOfTheTime() {
        NoiseOverTime course = course(7.3, 0, 0);
        assertThat(course.points()).extracting(NoiseOverTime.Point::frames).containsExactly(2, 4, 8);
        assertThat(course.last().seconds()).isEqualTo(8 * 80);
        assertThat(course.single()).isCloseTo(NOISE, withinPercentage(1.5));
        for (NoiseOverTime.Point point : course.points()) {
            assertThat(point.noise()).isCloseTo(NOISE / Math.sqrt(point.frames()), withinPercentage(3));
            assertThat(point.foretold()).isCloseTo(NOISE / Math.sqrt(point.frames()), withinPercentage(2));
        }
        assertThat(course.onSky()).isLessThan(0.1);
        assertThat(course.movedPx()).isCloseTo(7 * 7.3, withinPercentage(2));
    }

    /** A pattern of 8 e stays whole while the pointing does: variance 64 / (436 / 8) = 1.17 of what averages out. */
    @Test
    void aPatternOfTheSensorStaysWhereThePointingDoes() {
        NoiseOverTime course = course(0, 8, 0);
        assertThat(course.single()).as("it is the same in all frames").isCloseTo(NOISE, withinPercentage(1.5));
        assertThat(course.onSky()).isCloseTo(64 / (436 / 8.0), withinPercentage(6));
        assertThat(course.movedPx()).isLessThan(0.5);
    }

    /** The same pattern counts as noise and averages out once the pointing moves between exposures. */
    @Test
    void movingThePointingMakesThePatternAverageOut() {
        NoiseOverTime course = course(7.3, 8, 0);
        assertThat(course.single()).isCloseTo(Math.sqrt(436 + 64) / 1.5, withinPercentage(1.5));
        assertThat(course.onSky()).isLessThan(0.1);
        assertThat(course.onSensor()).isGreaterThan(0.7);
    }

    /** Stars too faint to be found roughen single frames, but differ in no two of them. */
    @Test
    void aCrowdOfFaintStarsIsNotTakenForNoise() {
        EntrySheet sheet = journal(7.3, 0, 2500).sheet("night");
        NoiseOverTime course = courses().of(sheet).orElseThrow();
        double alone = sheet.frames().get(0).report().background().orElseThrow().noise();
        assertThat(alone).as("what a single frame shows").isGreaterThan(1.03 * NOISE);
        assertThat(course.single()).isCloseTo(NOISE, withinPercentage(2.5));
        assertThat(course.onSky()).isLessThan(0.2);
    }

    @Test
    void itIsKeptForTheNextTime() {
        SmallJournal journal = journal(7.3, 0, 0);
        NoiseOverTime first = courses().of(journal.sheet("night")).orElseThrow();
        assertThat(folder.resolve("cache/noise")).isDirectoryContaining("glob:**.kept");
        assertThat(courses().of(journal.sheet("night"))).contains(first);
    }

    private NoiseOverTime course(double step, double pattern, int faint) {
        return courses().of(journal(step, pattern, faint).sheet("night")).orElseThrow();
    }

    private NoiseCourses courses() {
        Path cache = folder.resolve("cache");
        return new NoiseCourses(new MeasuredFiles(cache), cache);
    }

    private SmallJournal journal(double step, double pattern, int faint) {
        SmallJournal journal = new SmallJournal(folder.resolve("journal"));
        journal.entry("night", "rig: heron", "frames: [\"l*.fits\"]");
        for (int n = 0; n < 8; n++) {
            journal.frame(
                    "night",
                    "l" + n + ".fits",
                    FrameDraft.of(sky(n, step, pattern, faint).frame().plane())
                            .card("EXPTIME", "80.0")
                            .card("IMAGETYP", "'LIGHT'")
                            .card("DATE-OBS", "'2025-05-02T22:0" + n + ":00'"));
        }
        return journal;
    }

    private static SkySimulator sky(int n, double step, double pattern, int faint) {
        Dice fixed = new Dice(5);
        double[] map = new double[SIZE * SIZE];
        for (int i = 0; i < map.length; i++) {
            map[i] = pattern * fixed.normal();
        }
        SkySimulator sky = new SkySimulator(SIZE, SIZE, 100 + n)
                .sky(400)
                .camera(1.5, 6, 300, 60000)
                .shape((x, y) -> new StarShape.At(3, 0, 0, 3.5))
                .glow((x, y) -> map[(int) y * SIZE + (int) x]);
        Dice field = new Dice(9);
        for (int star = 0; star < 60 + faint; star++) {
            double x = field.uniform(-60, SIZE + 60) + n * step;
            double y = field.uniform(-10, SIZE + 10);
            double light = star < 60 ? 6000 * Math.pow(10, field.uniform(0, 1)) : 250 * field.uniform(0.5, 1);
            if (x > 4 && y > 4 && x < SIZE - 5 && y < SIZE - 5) {
                sky.light(x, y, light);
            }
        }
        return sky;
    }
}
