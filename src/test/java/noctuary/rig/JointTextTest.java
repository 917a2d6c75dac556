package noctuary.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JointTextTest {
    /** An inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "M48x0.75 male | 48 | 0.75 | true",
                "M42x1 female | 42 | 1 | false",
                "m 28,5 × 0,6 (external) | 28.5 | 0.6 | true",
                "M54 x 0.75 mm f | 54 | 0.75 | false",
                "2 in x 24 tpi female | 50.8 | 1.0583333 | false",
                "2\" 24 tpi male | 50.8 | 1.0583333 | true",
                "1 1/4 inch x 20 tpi male | 31.75 | 1.27 | true",
                "3/8 in - 16 tpi female | 9.525 | 1.5875 | false",
                "1.25 in push-fit male | 31.75 | 0 | true",
                "2 in barrel, male | 50.8 | 0 | true"
            })
    void readsTheUsualForms(String text, double diameterMm, double pitchMm, boolean male) {
        RigSpec.Joint joint = RigSpec.Joint.parse(text);
        assertThat(joint.diameterMm()).isCloseTo(diameterMm, within(1e-9));
        assertThat(joint.pitchMm()).isCloseTo(pitchMm, within(1e-6));
        assertThat(joint.male()).isEqualTo(male);
        assertThat(joint.text()).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "male",
                "M48",
                "M48 male",
                "M48x0.75",
                "48x0.75 male",
                "M0x0 male",
                "M48x99 female",
                "M9999x1 male",
                "bayonet female",
                "2 in male",
                "5/0 in x 24 tpi male",
                "1 in x 0 tpi male",
                "M4 8x0.75 male"
            })
    void keepsWhatItCannotReadUnread(String text) {
        assertThat(RigSpec.Joint.parse(text).unread()).isTrue();
    }

    @Test
    void longNonsenseIsQuick() {
        String nonsense = "1 ".repeat(20_000) + "male";
        assertThat(RigSpec.Joint.parse(nonsense).unread()).isTrue();
    }
}
