package noctuary.noise;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against the sum that defines the discrete transform, of both axes. */
class FourierTest {
    private static final int SIDE = 8;

    @Test
    void isTheSumThatDefinesIt() {
        float[] re = new float[SIDE * SIDE];
        float[] im = new float[SIDE * SIDE];
        Random random = new Random(8);
        for (int i = 0; i < re.length; i++) {
            re[i] = random.nextFloat();
            im[i] = random.nextFloat();
        }
        float[] gotRe = re.clone();
        float[] gotIm = im.clone();
        new Fourier(SIDE).transform(gotRe, gotIm);
        for (int v = 0; v < SIDE; v++) {
            for (int u = 0; u < SIDE; u++) {
                double[] sum = sum(re, im, u, v);
                assertEquals(sum[0], gotRe[v * SIDE + u], 1e-4, "real part at " + u + ", " + v);
                assertEquals(sum[1], gotIm[v * SIDE + u], 1e-4, "imaginary part at " + u + ", " + v);
            }
        }
    }

    private static double[] sum(float[] re, float[] im, int u, int v) {
        double[] sum = new double[2];
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                double turn = -2 * Math.PI * (u * x + v * y) / SIDE;
                sum[0] += re[y * SIDE + x] * Math.cos(turn) - im[y * SIDE + x] * Math.sin(turn);
                sum[1] += re[y * SIDE + x] * Math.sin(turn) + im[y * SIDE + x] * Math.cos(turn);
            }
        }
        return sum;
    }
}
