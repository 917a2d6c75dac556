package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.measure.NightCourse;
import noctuary.measure.NightCourse.DriftRate;
import org.junit.jupiter.api.Test;

/** The drift of a night in words. */
class DriftTextTest {
    @Test
    void arcsecondsAnHourComeFirstWhereTheScaleIsKnown() {
        DriftRate rate = new DriftRate(0.03, -0.04, OptionalDouble.of(0.06), OptionalDouble.of(-0.08), -0.125);
        assertThat(DriftText.of(List.of(night(Optional.of(rate)))))
                .containsExactly("The field drifted by 6.0 arcsec (3.0 px) an hour and turned by 0.13° an hour.");
    }

    @Test
    void pixelsRemainWithoutAScaleAndNothingWithoutDrift() {
        DriftRate rate = new DriftRate(0.03, -0.04, OptionalDouble.empty(), OptionalDouble.empty(), 0);
        assertThat(DriftText.of(List.of(night(Optional.of(rate)), night(Optional.empty()))))
                .singleElement()
                .asString()
                .contains("by 3.0 px an hour")
                .startsWith("18 October 2025: ");
    }

    private static NightCourse night(Optional<DriftRate> drift) {
        return new NightCourse(LocalDate.of(2025, 10, 18), "01.fits", List.of(), drift, List.of());
    }
}
