package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Further steps that a keeper takes, on square planes. */
final class KeeperSteps {
    private static final int SIDE = PlantedSky.SIDE;

    private KeeperSteps() {}

    static float[] each(float[] plane, DoubleUnaryOperator of) {
        float[] out = new float[plane.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (float) of.applyAsDouble(plane[i]);
        }
        return out;
    }

    static float[] cut(float[] plane) {
        return each(plane, v -> Math.max(0, Math.min(1, v)));
    }

    /** The value of a rank (0 lowest, 0.5 median) in squares of {@code 2 reach + 1} px. */
    static float[] ranked(float[] plane, int reach, double rank) {
        int side = 2 * reach + 1;
        float[] out = new float[plane.length];
        float[] box = new float[side * side];
        for (int i = 0; i < out.length; i++) {
            for (int k = 0; k < box.length; k++) {
                int x = Math.max(0, Math.min(SIDE - 1, i % SIDE + k % side - reach));
                int y = Math.max(0, Math.min(SIDE - 1, i / SIDE + k / side - reach));
                box[k] = plane[y * SIDE + x];
            }
            Arrays.sort(box);
            out[i] = box[(int) Math.rint(rank * (box.length - 1))];
        }
        return out;
    }

    /** Towards the Gaussian where the two differ by noise only: 1 / (1 + (difference / (3 noise))²) of the way. */
    static float[] keepingDetail(float[] plane, double sigma, double amount, double noise) {
        float[] smooth = Steps.gaussian(plane, sigma);
        float[] out = new float[plane.length];
        for (int i = 0; i < out.length; i++) {
            double off = (plane[i] - smooth[i]) / (3 * noise);
            out[i] = (float) (plane[i] + amount / (1 + off * off) * (smooth[i] - plane[i]));
        }
        return out;
    }

    /** Bilateral: Gaussian in distance and, with four times the noise, in value. */
    static float[] bilateral(float[] plane, double sigma, double noise) {
        int reach = (int) Math.ceil(2.5 * sigma);
        float[] out = new float[plane.length];
        for (int i = 0; i < out.length; i++) {
            double sum = 0;
            double all = 0;
            for (int dy = -reach; dy <= reach; dy++) {
                for (int dx = -reach; dx <= reach; dx++) {
                    int x = Math.max(0, Math.min(SIDE - 1, i % SIDE + dx));
                    int y = Math.max(0, Math.min(SIDE - 1, i / SIDE + dy));
                    double off = (plane[y * SIDE + x] - plane[i]) / (4 * noise);
                    double weight = Math.exp(-0.5 * ((dx * dx + dy * dy) / (sigma * sigma) + off * off));
                    sum += weight * plane[y * SIDE + x];
                    all += weight;
                }
            }
            out[i] = (float) (sum / all);
        }
        return out;
    }

    static float[] noisier(float[] plane, double sigma) {
        Random dice = new Random(41);
        return each(plane, v -> v + sigma * dice.nextGaussian());
    }

    /** Darkest of 3 x 3 px in place of the pixels around stars, by a share. */
    static float[] smallerStars(float[] plane, List<double[]> stars, double amount) {
        float[] least = ranked(plane, 1, 0);
        float[] out = plane.clone();
        boolean[] mask = mask(stars, 2);
        for (int i = 0; i < out.length; i++) {
            out[i] += mask[i] ? (float) (amount * (least[i] - plane[i])) : 0;
        }
        return out;
    }

    /** Stars replaced by the sky around them with its noise, and {@code left} of their light put back. */
    static float[] starsTaken(float[] plane, List<double[]> stars, double noise, double left) {
        float[] out = plane.clone();
        Random dice = new Random(43);
        boolean[] all = mask(stars, 2.4);
        for (double[] star : stars) {
            double reach = reach(star, 2.4);
            double level = around(plane, all, star, reach);
            for (int i : near(star, reach)) {
                out[i] = (float) (level + noise * dice.nextGaussian());
            }
        }
        for (int i = 0; i < out.length; i++) {
            out[i] += (float) (left * (plane[i] - out[i]));
        }
        return out;
    }

    private static double around(float[] plane, boolean[] mask, double[] star, double reach) {
        double[] values = near(star, reach + 6).stream()
                .filter(i -> !mask[i])
                .mapToDouble(i -> plane[i])
                .sorted()
                .toArray();
        return values.length == 0 ? PlantedSky.LEVEL : values[values.length / 2];
    }

    /** Light of {@code share} of each star's height over {@code noise}'s background, two to four widths out. */
    static float[] halos(float[] plane, List<double[]> stars, double share, double level) {
        float[] out = plane.clone();
        for (double[] star : stars) {
            double height = plane[(int) Math.rint(star[1]) * SIDE + (int) Math.rint(star[0])] - level;
            for (int i : near(star, 4.25 * PlantedSky.FWHM)) {
                double apart = Math.hypot(i % SIDE - star[0], i / SIDE - star[1]) / PlantedSky.FWHM;
                out[i] += apart > 2.25 ? (float) (share * height) : 0;
            }
        }
        return out;
    }

    /** Richardson 1972 and Lucy 1974 with a Gaussian of this width, above {@code floor}. */
    static float[] deconvolved(float[] plane, double fwhm, int rounds, double floor) {
        double sigma = fwhm / 2.3548;
        float[] seen = each(plane, v -> Math.max(1e-6, v - floor));
        float[] guess = seen.clone();
        for (int round = 0; round < rounds; round++) {
            float[] blurred = Steps.gaussian(guess, sigma);
            float[] ratio = new float[seen.length];
            for (int i = 0; i < ratio.length; i++) {
                ratio[i] = seen[i] / blurred[i];
            }
            float[] correction = Steps.gaussian(ratio, sigma);
            for (int i = 0; i < guess.length; i++) {
                guess[i] *= correction[i];
            }
        }
        return each(guess, v -> v + floor);
    }

    private static boolean[] mask(List<double[]> stars, double widths) {
        boolean[] mask = new boolean[SIDE * SIDE];
        stars.forEach(star -> near(star, reach(star, widths)).forEach(i -> mask[i] = true));
        return mask;
    }

    private static double reach(double[] star, double widths) {
        return PlantedSky.FWHM * (0.8 + widths / 4 * Math.log(Math.max(1, star[3] / 5)));
    }

    private static List<Integer> near(double[] star, double reach) {
        List<Integer> near = new ArrayList<>();
        for (int y = (int) Math.max(0, star[1] - reach); y <= Math.min(SIDE - 1, star[1] + reach); y++) {
            for (int x = (int) Math.max(0, star[0] - reach); x <= Math.min(SIDE - 1, star[0] + reach); x++) {
                if (Math.hypot(x - star[0], y - star[1]) <= reach) {
                    near.add(y * SIDE + x);
                }
            }
        }
        return near;
    }
}
