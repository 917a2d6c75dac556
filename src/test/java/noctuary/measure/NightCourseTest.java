package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nights simulated with a known effect. */
class NightCourseTest {
    @TempDir
    Path folder;

    @Test
    void nothingIsSaidOfTwentyClearNights() {
        for (int seed = 1; seed <= 20; seed++) {
            NightCourse course = PlantedNight.clear(4 + seed % 3, seed).course(folder.resolve("n" + seed));
            assertThat(course.observations()).as("night %d", seed).isEmpty();
        }
    }

    @Test
    void driftAndTurnAreThoseThatWerePlanted() {
        PlantedNight night = new PlantedNight(5, 3);
        night.driftX = n -> 1.5 * n;
        night.driftY = n -> -0.8 * n;
        night.turnDeg = n -> 0.1 * n;
        NightCourse course = night.course(folder);
        assertThat(course.night()).isEqualTo(LocalDate.of(2025, 5, 2));
        CourseFrame first = course.frames().get(0);
        CourseFrame last = course.frames().get(4);
        double dx = last.field().get().xPx() - first.field().get().xPx();
        double dy = last.field().get().yPx() - first.field().get().yPx();
        double turn = last.field().get().rotationDeg() - first.field().get().rotationDeg();
        assertThat(dx).isCloseTo(6, within(0.1));
        assertThat(dy).isCloseTo(-3.2, within(0.1));
        assertThat(turn).isCloseTo(0.4, within(0.05));
        double arcsecPerPx = 206.264806 * 3.3 / (750 * 0.95);
        assertThat(last.field().get().xArcsec().getAsDouble())
                .isCloseTo(last.field().get().xPx() * arcsecPerPx, within(1e-6));
        assertThat(course.drift().get().xPxPerMinute()).isCloseTo(0.1, within(0.003));
        assertThat(course.drift().get().rotationDegPerHour()).isCloseTo(0.4, within(0.05));
    }

    @Test
    void transparencyIsTheShareOfLightWhateverTheExposure() {
        PlantedNight night = new PlantedNight(4, 5);
        night.light = n -> n == 2 ? 0.6 : 1;
        night.seconds = n -> n == 1 ? 60 : 120;
        NightCourse course = night.course(folder);
        double clear = course.frames().get(0).relativeTransparency().getAsDouble();
        assertThat(course.frames().get(1).relativeTransparency().getAsDouble() / clear)
                .isCloseTo(1, within(0.03));
        CourseFrame dimmed = course.frames().get(2);
        double error = dimmed.transparencyError().getAsDouble();
        assertThat(error).isBetween(0.0005, 0.02);
        assertThat(dimmed.relativeTransparency().getAsDouble() / clear).isCloseTo(0.6, within(4 * error));
    }

    @Test
    void starsThatWidenSteadilyLookLikeFocusDrift() {
        PlantedNight night = PlantedNight.clear(6, 7);
        night.fwhmPx = n -> 2.6 + 0.2 * n;
        assertThat(night.course(folder).observations())
                .extracting(Observation::id)
                .containsExactly("focus-drift");
    }

    @Test
    void starsThatWidenAsTheTargetSinksDoNot() {
        PlantedNight night = new PlantedNight(6, 8);
        night.airmass = n -> 1.2 + 0.2 * n;
        night.fwhmPx = n -> 2.5 * Math.pow(1.2 + 0.2 * n, 0.6);
        night.light = n -> Math.pow(10, -0.4 * 0.25 * 0.2 * n);
        assertThat(night.course(folder).observations()).isEmpty();
    }

    @Test
    void lightThatDipsWhileTheSkyBrightensLooksLikeCloud() {
        PlantedNight night = PlantedNight.clear(6, 9);
        night.light = n -> n == 2 || n == 3 ? 0.55 : 1;
        night.sky = n -> n == 2 || n == 3 ? 120 : 100;
        NightCourse course = night.course(folder);
        assertThat(course.observations()).extracting(Observation::id).containsExactly("cloud");
        assertThat(course.observations().get(0).text())
                .contains("2 of 6 frames")
                .contains("background rose");
        assertThat(course.observations().get(0).evidence()).contains("20:30 UTC, 20:45 UTC");
    }

    @Test
    void lightThatFadesWhileStarsSpreadLooksLikeDew() {
        PlantedNight night = PlantedNight.clear(6, 10);
        night.light = n -> 1 - 0.1 * n;
        night.fwhmPx = n -> 2.6 + 0.15 * n;
        assertThat(night.course(folder).observations())
                .extracting(Observation::id)
                .containsExactly("dew");
    }

    @Test
    void starsGoneOnOneSideLookLikeAnObstruction() {
        PlantedNight night = PlantedNight.clear(5, 11);
        night.shade = (n, x, y) -> n == 4 && x < 80;
        NightCourse course = night.course(folder);
        assertThat(course.observations()).extracting(Observation::id).containsExactly("obstruction");
        assertThat(course.observations().get(0).text()).contains("left").contains("1 of 5 frames");
    }

    @Test
    void starsDrawnOutAlikeLookLikeTrailing() {
        PlantedNight night = PlantedNight.clear(6, 12);
        night.ellipticity = n -> n == 3 ? 0.3 : 0.05;
        NightCourse course = night.course(folder);
        assertThat(course.observations()).extracting(Observation::id).containsExactly("trailing");
        Elongation planted = course.frames().get(3).elongation().get();
        assertThat(planted.ellipticity()).isCloseTo(0.3, within(0.03));
        assertThat(planted.angleDeg()).isCloseTo(30, within(3.0));
    }

    @Test
    void threeFramesCarryNoJudgement() {
        PlantedNight night = new PlantedNight(3, 13);
        night.light = n -> 1 - 0.3 * n;
        night.fwhmPx = n -> 2.6 + n;
        assertThat(night.course(folder).observations()).isEmpty();
    }
}
