package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChoiceSheetsTest {
    @ParameterizedTest
    @CsvSource({"0.3, 0.3", "asinh 300, 300", "-1.5 steps, -1.5", "'0.6 px, twice', 0.6"})
    void theStrengthIsTheFirstNumberOfASetting(String setting, double strength) {
        assertThat(ChoiceSheets.strength(setting)).hasValue(strength);
    }

    @Test
    void aSettingWithoutANumberHasNoStrength() {
        assertThat(ChoiceSheets.strength("background")).isEqualTo(OptionalDouble.empty());
        assertThat(ChoiceSheets.strength("")).isEqualTo(OptionalDouble.empty());
    }
}
