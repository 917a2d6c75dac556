package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ByNameTest {
    @Test
    void numbersStandInTheOrderOfTheirValues() {
        assertThat(List.of("NGC 6888", "M 101", "m 31", "NGC 891", "M 13", "IC 1396").stream()
                        .sorted(ByName.ORDER))
                .containsExactly("IC 1396", "M 13", "m 31", "M 101", "NGC 891", "NGC 6888");
    }

    @Test
    void aNameComesBeforeALongerOneThatBeginsWithIt() {
        assertThat(List.of("M 31 again", "", "M 31", "007", "7").stream().sorted(ByName.ORDER))
                .containsExactly("", "007", "7", "M 31", "M 31 again");
    }
}
