package noctuary.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Values of scikit-image 0.19.3 (structural_similarity with gaussian_weights, sigma 1.5, use_sample_covariance False)
 * and numpy 1.24.2 (fft2), by src/test/python/effect_references.py. The fields are sums of sines and of a linear
 * congruential generator, the same in both languages.
 */
class ReferenceTest {
    private static final int SIDE = 64;

    /** 1000 + 10 (sum of twelve of x / 2³² - 6), x from 1664525 x + 1013904223 mod 2³², seed 12345. */
    private static double[] noise() {
        long x = 12345;
        double[] field = new double[SIDE * SIDE];
        for (int i = 0; i < field.length; i++) {
            double sum = 0;
            for (int k = 0; k < 12; k++) {
                x = (1664525L * x + 1013904223L) % (1L << 32);
                sum += x / (double) (1L << 32);
            }
            field[i] = 10 * (sum - 6);
        }
        return field;
    }

    private static float[] waves() {
        float[] field = new float[SIDE * SIDE];
        for (int i = 0; i < field.length; i++) {
            field[i] = (float)
                    (128 + 60 * Math.sin(2 * Math.PI * (i % SIDE) / 16) * Math.cos(2 * Math.PI * (i / SIDE) / 32));
        }
        return field;
    }

    private static double ssim(float[] other) {
        return Ssim.mean(waves(), other, SIDE, SIDE, 255);
    }

    @Test
    void similarityIsThatOfTheReference() {
        double[] noise = noise();
        float[] noisy = waves();
        float[] brighter = waves();
        float[] flatter = waves();
        for (int i = 0; i < noisy.length; i++) {
            noisy[i] += (float) noise[i];
            brighter[i] += 10;
            flatter[i] = 128 + 0.9f * (flatter[i] - 128);
        }
        assertThat(ssim(noisy)).isCloseTo(0.853016, within(1e-5));
        assertThat(ssim(brighter)).isCloseTo(0.996892, within(1e-5));
        assertThat(ssim(flatter)).isCloseTo(0.994951, within(1e-5));
        assertThat(ssim(waves())).isEqualTo(1);
    }

    /** Two constants: (2 ab + C1) / (a² + b² + C1), C1 = 2.55². */
    @Test
    void similarityOfConstants() {
        float[] a = new float[SIDE * SIDE];
        float[] b = new float[SIDE * SIDE];
        Arrays.fill(a, 100);
        Arrays.fill(b, 120);
        assertThat(Ssim.mean(a, b, SIDE, SIDE, 255)).isCloseTo(0.9836109, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"2, 4, 7741615.693", "4, 8, 1948904.31", "8, 16, 468918.4726"})
    void powerByPeriodIsThatOfTheReference(double shortest, double longest, double expected) {
        double[] noise = noise();
        double[] window = new double[Spectrum.SIDE * Spectrum.SIDE];
        for (int i = 0; i < window.length; i++) {
            window[i] = noise[i / Spectrum.SIDE * SIDE + i % Spectrum.SIDE];
        }
        assertThat(Spectrum.power(window, shortest, longest)).isCloseTo(expected, within(1e-8 * expected));
    }
}
