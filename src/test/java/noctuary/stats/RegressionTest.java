package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RegressionTest {
    /** NIST StRD Norris, certified values. */
    @Test
    void norris() {
        Table table = Table.read("norris.csv");
        Regression fit = Regression.of(table.column(0), table.column(1));
        agree(fit.coefficients(), 1e-10, -0.262323073774029, 1.00211681802045);
        agree(fit.standardErrors(), 1e-10, 0.232818234301152, 4.29796848199937E-04);
        agree(new double[] {fit.residualSd(), fit.rSquared()}, 1e-10, 0.884796396144373, 0.999993745883712);
    }

    /** NIST StRD Longley, certified values. */
    @Test
    void longley() {
        double[][] columns = Table.read("longley.csv").columns();
        Regression fit = Regression.of(columns[0], Arrays.copyOfRange(columns, 1, 7));
        agree(
                fit.coefficients(),
                1e-7,
                -3482258.63459582,
                15.0618722713733,
                -0.0358191792925910,
                -2.02022980381683,
                -1.03322686717359,
                -0.0511041056535807,
                1829.15146461355);
        agree(
                fit.standardErrors(),
                1e-7,
                890420.383607373,
                84.9149257747669,
                0.0334910077722432,
                0.488399681651699,
                0.214274163161675,
                0.226073200069370,
                455.478499142212);
        agree(new double[] {fit.residualSd(), fit.rSquared()}, 1e-7, 304.854073561965, 0.995479004577296);
    }

    /** Eight nights worked in the project's handbook. */
    @Test
    void nightsWithAirmass() {
        double[] y = {3.1, 3.4, 3.9, 3.3, 2.7, 2.8, 3.2, 3.0};
        double[] after = {0, 0, 0, 0, 1, 1, 1, 1};
        double[] airmass = {1.1, 1.3, 1.7, 1.2, 1.15, 1.25, 1.6, 1.4};
        Regression fit = Regression.of(y, after, airmass);
        StudentTest shift = fit.coefficient(1);
        assertThat(shift.difference()).isCloseTo(-0.530814, within(1e-5));
        assertThat(shift.standardError()).isCloseTo(0.022534, within(1e-5));
        assertThat(shift.low()).isCloseTo(-0.58874, within(1e-5));
        assertThat(shift.high()).isCloseTo(-0.47289, within(1e-5));
        assertThat(fit.coefficients()[2]).isCloseTo(1.232558, within(1e-5));
        assertThat(fit.standardErrors()[2]).isCloseTo(0.056007, within(1e-5));
        assertThat(fit.coefficients()[0]).isCloseTo(1.791860, within(1e-5));
        assertThat(fit.residualSd()).isCloseTo(0.0318061, within(1e-5));
        assertThat(fit.df()).isEqualTo(5);
    }

    /** The sleep data of Student (1908) as a regression: the pooled t test, R prints t -1.8608, df 18, p 0.07919. */
    @Test
    void aSideAsTheOnlyColumnIsThePooledTest() {
        double[] y = Arrays.copyOf(Samples.SLEEP_ONE, 20);
        System.arraycopy(Samples.SLEEP_TWO, 0, y, 10, 10);
        double[] first = new double[20];
        Arrays.fill(first, 0, 10, 1);
        StudentTest shift = Regression.of(y, first).coefficient(1);
        assertThat(shift.t()).isCloseTo(-1.8608, within(5e-5));
        assertThat(shift.p()).isCloseTo(0.07919, within(5e-6));
    }

    @Test
    void columnsThatSayTheSameAreRefused() {
        double[] y = {1, 2, 3, 5, 4};
        assertThatThrownBy(() -> Regression.of(y, new double[] {1, 2, 3, 4, 5}, new double[] {3, 5, 7, 9, 11}))
                .hasMessage("columns depend on one another");
        assertThatThrownBy(() -> Regression.of(y, new double[] {2, 2, 2, 2, 2}))
                .hasMessage("columns depend on one another");
        assertThatThrownBy(() -> Regression.of(new double[] {1, 2}, new double[] {1, 3}))
                .hasMessage("2 values for 2 coefficients");
    }

    private static void agree(double[] found, double relative, double... certified) {
        for (int i = 0; i < certified.length; i++) {
            assertThat(found[i]).isCloseTo(certified[i], within(Math.abs(certified[i]) * relative));
        }
    }
}
