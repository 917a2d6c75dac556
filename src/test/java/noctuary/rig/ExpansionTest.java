package noctuary.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExpansionTest {
    /** 560 mm cooled by ten degrees; coefficients of public expansion tables, products by hand. */
    @ParameterizedTest
    @CsvSource({"ALUMINIUM, -129.36", "STEEL, -66.08", "CARBON_FIBRE, -5.6"})
    void aTubeShrinksInTheCold(Expansion material, double expectedUm) {
        assertThat(material.shiftUm(560, -10)).isCloseTo(expectedUm, within(1e-9));
        assertThat(material.kelvinsFor(560, expectedUm)).isCloseTo(-10, within(1e-9));
    }
}
