package noctuary.effect;

/**
 * Power of a square window by spatial period: the mean is taken off, a Hann window laid on along both axes, then the
 * squared size of the discrete Fourier transform summed over rings of frequency.
 */
final class Spectrum {
    static final int SIDE = 32;
    private static final double[] COS = new double[SIDE];
    private static final double[] SIN = new double[SIDE];
    private static final double[] HANN = new double[SIDE];

    static {
        for (int i = 0; i < SIDE; i++) {
            COS[i] = Math.cos(2 * Math.PI * i / SIDE);
            SIN[i] = Math.sin(2 * Math.PI * i / SIDE);
            HANN[i] = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / (SIDE - 1));
        }
    }

    private Spectrum() {}

    /** Power with periods from {@code shortest} (included) to {@code longest} px, both directions together. */
    static double power(double[] values, double shortest, double longest) {
        double[] re = tapered(values);
        double[] im = new double[re.length];
        double[][] rows = transformed(re, im, 1, SIDE);
        double[][] both = transformed(rows[0], rows[1], SIDE, 1);
        double sum = 0;
        for (int i = 0; i < re.length; i++) {
            double frequency = Math.hypot(folded(i % SIDE), folded(i / SIDE)) / SIDE;
            if (frequency > 1 / longest && frequency <= 1 / shortest) {
                sum += both[0][i] * both[0][i] + both[1][i] * both[1][i];
            }
        }
        return sum;
    }

    private static int folded(int k) {
        return Math.min(k, SIDE - k);
    }

    private static double[] tapered(double[] values) {
        double mean = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (values[i] - mean) * HANN[i % SIDE] * HANN[i / SIDE];
        }
        return out;
    }

    /** Along lines whose pixels are {@code step} apart, lines {@code next} apart. */
    private static double[][] transformed(double[] re, double[] im, int step, int next) {
        double[] outRe = new double[re.length];
        double[] outIm = new double[re.length];
        for (int line = 0; line < SIDE; line++) {
            for (int k = 0; k < SIDE; k++) {
                double sumRe = 0;
                double sumIm = 0;
                for (int n = 0; n < SIDE; n++) {
                    int at = line * next + n * step;
                    double c = COS[n * k % SIDE];
                    double s = SIN[n * k % SIDE];
                    sumRe += re[at] * c + im[at] * s;
                    sumIm += im[at] * c - re[at] * s;
                }
                outRe[line * next + k * step] = sumRe;
                outIm[line * next + k * step] = sumIm;
            }
        }
        return new double[][] {outRe, outIm};
    }
}
