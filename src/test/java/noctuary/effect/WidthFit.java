package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/**
 * Least-squares Moffat width of a star without noise, for what a step makes of a width: Gauss and Newton with numerical
 * derivatives over a square of pixels; height, width, beta, place and background are free.
 */
final class WidthFit {
    private static final int REACH = 11;
    private static final int PARTS = 3;

    private WidthFit() {}

    /**
     * Width after a step over width before of stars of this signal-to-noise ratio in noise: the mean picture of 400 of
     * them is fitted, at four places within a pixel.
     */
    static double inNoise(UnaryOperator<float[]> step, double snr) {
        double sum = 0;
        for (double[] place : new double[][] {{0, 0.1}, {0.2, 0.4}, {0.45, 0.3}, {0.3, 0.05}}) {
            float[] clean = new float[PlantedSky.SIDE * PlantedSky.SIDE];
            PlantedSky.add(clean, new double[] {16 + place[0], 16 + place[1], PlantedSky.flux(snr)}, 1);
            float[] noisy = new float[clean.length];
            Random dice = new Random(1);
            for (int i = 0; i < noisy.length; i++) {
                int x = i % PlantedSky.SIDE % 32;
                int y = i / PlantedSky.SIDE % 32;
                noisy[i] = clean[y * PlantedSky.SIDE + x] + (float) (PlantedSky.SIGMA * dice.nextGaussian());
            }
            sum += fwhm(meanOfStars(step.apply(noisy)), 16 + place[0], 16 + place[1])
                    / fwhm(clean, 16 + place[0], 16 + place[1])
                    / 4;
        }
        return sum;
    }

    /** A way from a linear plane with stars of which it may know. */
    interface Way {
        float[] of(float[] linear, List<double[]> stars);
    }

    /** Of a field of stars: before a step, with the width there once it is known. */
    private record Stars(double x, double y, float[] linear, List<double[]> stars, Map<String, Double> widths) {}

    private static final Map<String, List<Stars>> FIELDS = new ConcurrentHashMap<>();

    /**
     * Width after one way over width after the other, of stars of this signal-to-noise ratio on the sky.
     *
     * @param beforeName tells ways before the step apart, so that each is fitted once
     */
    static double ratio(Way before, Way after, double level, double snr, PlantedSky.Seeing seeing, String beforeName) {
        double sum = 0;
        List<Stars> fields = FIELDS.computeIfAbsent(
                snr + " " + seeing, k -> List.of(stars(0.2, 0.4, snr, seeing), stars(0.45, 0.1, snr, seeing)));
        for (Stars field : fields) {
            double width = field.widths()
                    .computeIfAbsent(beforeName, k -> fwhm(field, before.of(field.linear(), field.stars()), level));
            sum += fwhm(field, after.of(field.linear(), field.stars()), level) / width / 2;
        }
        return sum;
    }

    private static double fwhm(Stars field, float[] pixels, double level) {
        return fwhm(above(pixels, level), 16 + field.x(), 16 + field.y());
    }

    private static Stars stars(double atX, double atY, double snr, PlantedSky.Seeing seeing) {
        float[] linear = new float[PlantedSky.SIDE * PlantedSky.SIDE];
        Random dice = new Random(1);
        for (int i = 0; i < linear.length; i++) {
            linear[i] = (float) (PlantedSky.LEVEL + seeing.sigma() * dice.nextGaussian());
        }
        List<double[]> stars = new ArrayList<>();
        for (int k = 0; k < PlantedSky.SIDE / 32 * (PlantedSky.SIDE / 32); k++) {
            stars.add(new double[] {k % 20 * 32 + 16 + atX, k / 20 * 32 + 16 + atY, seeing.flux(snr), snr});
            seeing.add(linear, stars.get(k), 1);
        }
        return new Stars(atX, atY, linear, stars, new ConcurrentHashMap<>());
    }

    private static float[] above(float[] pixels, double level) {
        return meanOfStars(KeeperSteps.each(pixels, v -> v - level));
    }

    /** The mean of the squares of 32 px, in the first of them. */
    private static float[] meanOfStars(float[] pixels) {
        int across = PlantedSky.SIDE / 32;
        float[] mean = new float[pixels.length];
        for (int i = 0; i < pixels.length; i++) {
            int x = i % PlantedSky.SIDE % 32;
            int y = i / PlantedSky.SIDE % 32;
            mean[y * PlantedSky.SIDE + x] += pixels[i] / (across * across);
        }
        return mean;
    }

    private static double fwhm(float[] pixels, double x, double y) {
        int left = (int) Math.rint(x) - REACH;
        int top = (int) Math.rint(y) - REACH;
        double peak = pixels[(top + REACH) * PlantedSky.SIDE + left + REACH];
        double[] p = {Math.log(peak), Math.log(3.6), Math.log(3), x, y, 0};
        double last = Double.POSITIVE_INFINITY;
        for (int round = 0; round < 60 && last > 1e-6; round++) {
            double[] step = step(pixels, left, top, p);
            last = Math.max(Math.abs(step[1]), Math.abs(step[2]) / 10);
            for (int k = 0; k < p.length; k++) {
                p[k] += 0.5 * Math.max(-0.3, Math.min(0.3, step[k] / (k == 5 ? peak : 1))) * (k == 5 ? peak : 1);
            }
        }
        return Math.exp(p[1]);
    }

    private static double[] step(float[] pixels, int left, int top, double[] p) {
        int n = p.length;
        double[][] normal = new double[n][n + 1];
        double[] nudge = {1e-4, 1e-4, 1e-4, 1e-4, 1e-4, Math.exp(p[0]) * 1e-5};
        for (int i = 0; i < (2 * REACH + 1) * (2 * REACH + 1); i++) {
            int x = left + i % (2 * REACH + 1);
            int y = top + i / (2 * REACH + 1);
            double at = model(p, x, y);
            double[] slope = new double[n];
            for (int k = 0; k < n; k++) {
                double[] q = p.clone();
                q[k] += nudge[k];
                slope[k] = (model(q, x, y) - at) / nudge[k];
            }
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    normal[a][b] += slope[a] * slope[b];
                }
                normal[a][n] += slope[a] * (pixels[y * PlantedSky.SIDE + x] - at);
            }
        }
        return solved(normal);
    }

    private static double[] solved(double[][] m) {
        int n = m.length;
        for (int p = 0; p < n; p++) {
            m[p][p] *= 1 + 1e-9;
            for (int r = 0; r < n; r++) {
                double f = r == p ? 0 : m[r][p] / m[p][p];
                for (int c = p; c <= n && r != p; c++) {
                    m[r][c] -= f * m[p][c];
                }
            }
        }
        double[] x = new double[n];
        for (int r = 0; r < n; r++) {
            x[r] = m[r][n] / m[r][r];
        }
        return x;
    }

    /** Integrated over the pixel from the middles of its parts. */
    private static double model(double[] p, double x, double y) {
        double beta = Math.exp(p[2]);
        double grown = 4 * (Math.pow(2, 1 / beta) - 1) / Math.exp(2 * p[1]);
        double sum = 0;
        for (int k = 0; k < PARTS * PARTS; k++) {
            double dx = x + (k % PARTS - 1) / (double) PARTS - p[3];
            double dy = y + (k / PARTS - 1) / (double) PARTS - p[4];
            sum += Math.exp(-beta * Math.log(1 + grown * (dx * dx + dy * dy)));
        }
        return p[5] + Math.exp(p[0]) * sum / (PARTS * PARTS);
    }
}
