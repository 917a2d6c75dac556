package noctuary.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SimilarityTest {
    private static final double[] X = {0, 100, 0, 80};
    private static final double[] Y = {0, 0, 100, 60};
    private static final double[] U = {3, 103.9961542, 2.1186199, 83.2680953};
    private static final double[] V = {-2, -1.1186199, 98.9961542, 59.3027966};

    /** scikit-image 0.19.3, SimilarityTransform: scale 1.01, 0.5 degrees, shift (3, -2). */
    @Test
    void findsTheTransformOfExactPairs() {
        Alignment found = fit(U, V, false);
        assertThat(found.scale()).isCloseTo(1.01, within(1e-8));
        assertThat(found.rotationDeg()).isCloseTo(0.5, within(1e-6));
        assertThat(found.shiftX()).isCloseTo(3, within(1e-6));
        assertThat(found.shiftY()).isCloseTo(-2, within(1e-6));
    }

    /** The same pairs off by up to 0.1; values of the complex least squares of numpy 1.24.2 on exact coordinates. */
    @Test
    void leastSquaresOfNoisyPairs() {
        Alignment exact = new Alignment(1.01, 0.5, false, 3, -2, 0, 0);
        double[][] noise = {{0.1, -0.1}, {-0.1, 0.1}, {0.05, 0.1}, {-0.05, -0.1}};
        double[] u = new double[4];
        double[] v = new double[4];
        for (int i = 0; i < 4; i++) {
            double[] p = exact.apply(X[i], Y[i]);
            u[i] = p[0] + noise[i][0];
            v[i] = p[1] + noise[i][1];
        }
        Alignment found = fit(u, v, false);
        assertThat(found.scale()).isCloseTo(1.00935486, within(1e-8));
        assertThat(found.rotationDeg()).isCloseTo(0.50031959, within(1e-8));
        assertThat(found.shiftX()).isCloseTo(3.02903226, within(1e-8));
        assertThat(found.shiftY()).isCloseTo(-1.97419355, within(1e-8));
        double squares = 0;
        for (int i = 0; i < 4; i++) {
            double[] p = found.apply(X[i], Y[i]);
            squares += Math.pow(p[0] - u[i], 2) + Math.pow(p[1] - v[i], 2);
        }
        assertThat(Math.sqrt(squares / 4)).isCloseTo(0.12098387, within(1e-8));
    }

    @ParameterizedTest
    @CsvSource({"1.3, 40, false", "0.2, -170, true", "5, 90, true", "1, 180, false"})
    void theWayBackEndsWhereItBegan(double scale, double rotationDeg, boolean mirrored) {
        Alignment there = new Alignment(scale, rotationDeg, mirrored, 12, -7, 9, 0.5);
        double[] p = there.apply(31, 17);
        double[] q = there.inverse().apply(p[0], p[1]);
        assertThat(q[0]).isCloseTo(31, within(1e-9));
        assertThat(q[1]).isCloseTo(17, within(1e-9));
        assertThat(there.inverse().rmsPx()).isCloseTo(0.5 / scale, within(1e-12));
    }

    @Test
    void aMirroredFieldIsFittedMirrored() {
        Alignment mirrored = new Alignment(2, 30, true, 5, 6, 0, 0);
        double[] u = new double[4];
        double[] v = new double[4];
        for (int i = 0; i < 4; i++) {
            double[] p = mirrored.apply(X[i], Y[i]);
            u[i] = p[0];
            v[i] = p[1];
        }
        Alignment found = fit(u, v, true);
        assertThat(found.scale()).isCloseTo(2, within(1e-12));
        assertThat(found.rotationDeg()).isCloseTo(30, within(1e-9));
        assertThat(found.shiftX()).isCloseTo(5, within(1e-9));
    }

    private static Alignment fit(double[] u, double[] v, boolean mirrored) {
        return Similarity.fit(X, Y, u, v, new double[] {1, 1, 1, 1}, 4, mirrored)
                .alignment(4, 0);
    }
}
