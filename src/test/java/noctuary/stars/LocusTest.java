package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A planted surface comes back however many values stray above it. */
class LocusTest {
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.2, 0.5})
    void straysDoNotLiftTheSurface(double share) {
        Random random = new Random(11);
        int n = 400;
        double[][] basis = new double[n][];
        double[] value = new double[n];
        double[] error = new double[n];
        for (int i = 0; i < n; i++) {
            double x = 2 * random.nextDouble() - 1;
            basis[i] = new double[] {1, x, x * x};
            error[i] = 0.02 + 0.1 * random.nextDouble();
            double stray = random.nextDouble() < share ? -Math.log(1 - random.nextDouble()) : 0;
            value[i] = 2.5 + 0.3 * x + 0.2 * x * x + stray + error[i] * random.nextGaussian();
        }
        Surface found = Locus.fit(basis, value, error, 0.08);
        double[] truth = {2.5, 0.3, 0.2};
        for (int t = 0; t < truth.length; t++) {
            double sigma = Math.sqrt(found.covariance()[t * truth.length + t]);
            assertThat(sigma).isLessThan(0.02);
            assertThat(found.coefficient()[t]).isCloseTo(truth[t], within(3 * sigma));
        }
    }
}
