package noctuary.noise;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the sum of every pixel of the square, one by one. */
class BoxSumsTest {
    private static final int STRIDE = 32;

    @ParameterizedTest
    @CsvSource({"32,32,12", "32,32,1", "31,29,12", "7,5,3", "5,30,12", "1,1,4", "30,2,1"})
    void sumsWhatLiesInTheTile(int width, int height, int reach) {
        float[] values = new float[STRIDE * STRIDE];
        Random random = new Random(width * 31L + height);
        for (int i = 0; i < values.length; i++) {
            values[i] = random.nextFloat() - 0.5f;
        }
        float[] sums = new float[values.length];
        BoxSums boxes = new BoxSums(width, height, STRIDE, 12);
        boxes.sum(values, 2, sums);
        boxes.sum(values, reach, sums);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                assertEquals(one(values, x, y, width, height, reach), sums[y * STRIDE + x], 1e-4);
            }
        }
    }

    private static double one(float[] values, int cx, int cy, int width, int height, int reach) {
        double sum = 0;
        for (int y = Math.max(0, cy - reach); y <= Math.min(height - 1, cy + reach); y++) {
            for (int x = Math.max(0, cx - reach); x <= Math.min(width - 1, cx + reach); x++) {
                sum += values[y * STRIDE + x];
            }
        }
        return sum;
    }
}
