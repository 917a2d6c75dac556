package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import noctuary.fits.Card;
import noctuary.fits.FrameHeader;
import noctuary.fits.FrameKind;
import noctuary.measure.CourseFrame;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameReports;
import noctuary.measure.FrameSheet;
import noctuary.measure.Measurement;
import noctuary.measure.NightCourse;
import noctuary.measure.Observation;
import org.junit.jupiter.api.Test;

class RefocusRuleTest {
    /** w² = 2.5² + (1.2 ΔT)²: a tenth wider after sqrt(0.21) x 2.5 / 1.2 = 0.9547 degrees. */
    @Test
    void theDegreesThatCostATenthAreThosePlanted() {
        FocusNight night = night(6, 0.3, n -> Math.hypot(2.5, 1.2 * 0.3 * n), true);
        assertThat(night.degreesFor10Percent().getAsDouble()).isCloseTo(0.9547, within(1e-3));
        assertThat(night.degreesPerHour()).isCloseTo(-1.2, within(1e-9));
        RefocusRule rule = RefocusRule.of(List.of(night), OptionalDouble.empty(), List.of());
        assertThat(rule.minutes().getAsDouble()).isCloseTo(47.7, within(0.1));
        assertThat(rule.sentence())
                .startsWith("Refocus after every 1.0 degrees, about 48 min at that night’s rate")
                .contains("One night says so");
    }

    @Test
    void starsThatDoNotWidenMakeNoRule() {
        FocusNight night = night(6, 0.3, n -> 2.5 + 0.01 * (n % 2), false);
        RefocusRule rule = RefocusRule.of(List.of(night), OptionalDouble.empty(), List.of());
        assertThat(rule.degrees()).isEmpty();
        assertThat(rule.sentence()).contains("did not clearly widen, over 1.5 degrees");
    }

    @Test
    void withoutTemperaturesThereIsNoNight() {
        assertThat(RefocusRule.of(List.of(), OptionalDouble.empty(), List.of()).sentence())
                .startsWith("No rule yet");
    }

    @Test
    void aTubeThatGoesOnCoolingIsNotCuredByWaiting() {
        FocusNight steady = night(6, 0.3, n -> 2.5, false);
        assertThat(Cooling.sentence(List.of(steady, steady)).orElseThrow())
                .isEqualTo(
                        "Over 2 nights it cooled by 1.2 degrees an hour in the first half and by 1.2 in the second: it "
                                + "goes on all night, so waiting before the first focus does not end it.");
        assertThat(Cooling.sentence(List.of(steady))).isEmpty();
    }

    private static FocusNight night(int frames, double coolingPerFrame, IntToDoubleFunction width, boolean growing) {
        List<CourseFrame> course = new ArrayList<>();
        List<FrameSheet> sheets = new ArrayList<>();
        IntStream.range(0, frames).forEach(n -> {
            String name = "l" + n + ".fits";
            Instant taken = Instant.parse("2025-05-02T20:00:00Z").plusSeconds(900L * n);
            course.add(frame(name, taken, width.applyAsDouble(n)));
            sheets.add(sheet(name, 12 - coolingPerFrame * n));
        });
        List<Observation> seen = growing ? List.of(new Observation("focus-drift", "", "")) : List.of();
        NightCourse night = new NightCourse(LocalDate.of(2025, 5, 2), "l0.fits", course, Optional.empty(), seen);
        return FocusNight.of("slug", night, sheets).orElseThrow();
    }

    private static CourseFrame frame(String name, Instant taken, double width) {
        OptionalDouble absent = OptionalDouble.empty();
        return new CourseFrame(
                name,
                taken,
                "L",
                OptionalDouble.of(120),
                OptionalDouble.of(width),
                OptionalDouble.of(0.02),
                absent,
                absent,
                Optional.empty(),
                absent,
                absent,
                50,
                OptionalDouble.of(1),
                absent,
                absent,
                50,
                Optional.empty(),
                Optional.empty());
    }

    private static FrameSheet sheet(String name, double celsius) {
        FrameHeader header = FrameHeader.of(List.of(new Card("FOCTEMP", Double.toString(celsius), "", false)), 10, 10);
        Measurement measurement = new Measurement(
                FrameReport.Kind.SINGLE,
                10,
                10,
                List.of(),
                Optional.of(header),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                List.of());
        FrameReport report = FrameReports.of(name, measurement, OptionalDouble.empty());
        return new FrameSheet(name, Path.of(name), FrameKind.LIGHT, report, measurement, Optional.empty());
    }
}
