package noctuary.effect;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import noctuary.stats.Robust;

/**
 * What a step does by definition, worked out on planted pixels without any estimate: noise on fields of nothing else,
 * widths on the mean of many stars, lost light on the difference of a field with and without its stars.
 */
final class StepTruth {
    private static final int SIDE = PlantedSky.SIDE;
    private static final double[] SNRS = {30, 110, 350};
    private static final int FIELDS = 3;

    private final Chain chain;
    private final PlantedSky sky;
    private final float[] starless;

    StepTruth(Chain chain, PlantedSky sky) {
        this.chain = chain;
        this.sky = sky;
        this.starless = sky.starless();
    }

    private float[] nothing(int seed) {
        Random dice = new Random(1000 + seed);
        float[] plane = new float[SIDE * SIDE];
        for (int i = 0; i < plane.length; i++) {
            plane[i] = (float) (PlantedSky.LEVEL + sky.seeing().sigma() * dice.nextGaussian());
        }
        return plane;
    }

    /**
     * Noise of means over 1 and over 8 px after over before, under the same stretch, and the share that is black. Smoothed
     * noise shows the stretch as a straight line, so that the noise it came from is counted by that line too.
     */
    double[] noiseAndCut() {
        double[] bent = noiseAndCut(chain);
        boolean straight = bent[0] < 1 && chain.order() != Chain.Order.ALONE;
        double[] noise = straight ? noiseAndCut(chain.straight()) : bent;
        return new double[] {noise[0], noise[1], bent[2]};
    }

    private double[] noiseAndCut(Chain chain) {
        double[] sums = new double[5];
        for (int seed = 0; seed < FIELDS; seed++) {
            float[] nothing = nothing(seed);
            float[] before = chain.plain(nothing, List.of());
            float[] after = chain.picture(nothing, List.of());
            for (int k = 0; k < 2; k++) {
                sums[2 * k] += variance(before, k == 0 ? 1 : 8);
                sums[2 * k + 1] += variance(after, k == 0 ? 1 : 8);
            }
            for (float v : after) {
                sums[4] += v <= 0 ? 100.0 / after.length / FIELDS : 0;
            }
        }
        return new double[] {Math.sqrt(sums[1] / sums[0]), Math.sqrt(sums[3] / sums[2]), sums[4]};
    }

    private static double variance(float[] plane, int size) {
        int across = SIDE / size - 2;
        double sum = 0;
        double squares = 0;
        for (int cell = 0; cell < across * across; cell++) {
            double mean = 0;
            for (int i = 0; i < size * size; i++) {
                int x = (1 + cell % across) * size + i % size;
                int y = (1 + cell / across) * size + i / size;
                mean += plane[y * SIDE + x] / (size * size);
            }
            sum += mean;
            squares += mean * mean;
        }
        double n = across * across;
        return squares / n - sum / n * (sum / n);
    }

    /** Median over brightness of the widths after over before, the true stretch undone. */
    double fwhmRatio() {
        double[] ratios = Arrays.stream(SNRS)
                .map(snr -> WidthFit.ratio(
                        (linear, stars) -> chain.order() == Chain.Order.ALONE ? chain.origin(linear) : linear,
                        (linear, stars) ->
                                chain.row().tone() ? chain.origin(linear) : chain.undone(chain.picture(linear, stars)),
                        chain.originLevel(),
                        snr,
                        sky.seeing(),
                        chain.order() == Chain.Order.ALONE ? chain.tone().name() : "linear"))
                .toArray();
        return Robust.median(ratios);
    }

    /** Per cent of the stars that keep less than half of their light within 1.2 widths. */
    double lostPercent() {
        float[] before = difference(chain.plain(sky.pixels(), sky.stars()), chain.plain(starless, sky.stars()));
        float[] after = difference(chain.picture(sky.pixels(), sky.stars()), chain.picture(starless, sky.stars()));
        int lost = 0;
        for (double[] star : sky.stars()) {
            lost += light(after, star) < 0.5 * light(before, star) ? 1 : 0;
        }
        return 100.0 * lost / sky.stars().size();
    }

    private static float[] difference(float[] a, float[] b) {
        float[] out = new float[a.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = a[i] - b[i];
        }
        return out;
    }

    private double light(float[] plane, double[] star) {
        double sum = 0;
        for (int dy = -8; dy <= 8; dy++) {
            for (int dx = -8; dx <= 8; dx++) {
                int x = (int) Math.rint(star[0]) + dx;
                int y = (int) Math.rint(star[1]) + dy;
                boolean near = Math.hypot(x - star[0], y - star[1])
                        <= 1.2 * sky.seeing().fwhm();
                sum += near ? plane[y * SIDE + x] : 0;
            }
        }
        return sum;
    }

    /** Power of the nebula's structure at 4 to 8 px after over before: of two fields alike but for noise, crosswise. */
    double detailKept() {
        float[] one = new float[starless.length];
        float[] two = new float[starless.length];
        float[] calm = sky.noiseless();
        sky.stars().forEach(star -> sky.seeing().add(calm, star, -1));
        Random dice = new Random(3);
        for (int i = 0; i < one.length; i++) {
            one[i] = calm[i] + (float) (sky.seeing().sigma() * dice.nextGaussian());
            two[i] = calm[i] + (float) (sky.seeing().sigma() * dice.nextGaussian());
        }
        return cross(chain.picture(one, List.of()), chain.picture(two, List.of()), calm)
                / cross(chain.plain(one, List.of()), chain.plain(two, List.of()), calm);
    }

    private static double cross(float[] one, float[] two, float[] calm) {
        double sum = 0;
        int w = Spectrum.SIDE;
        for (int cell = 0; cell < (SIDE / w) * (SIDE / w); cell++) {
            int left = cell % (SIDE / w) * w;
            int top = cell / (SIDE / w) * w;
            double[] both = new double[w * w];
            double[] apart = new double[w * w];
            double light = 0;
            for (int i = 0; i < w * w; i++) {
                int at = (top + i / w) * SIDE + left + i % w;
                both[i] = one[at] + two[at];
                apart[i] = one[at] - two[at];
                light += (calm[at] - PlantedSky.LEVEL) / (w * w);
            }
            sum += light > 200 ? (Spectrum.power(both, 4, 8) - Spectrum.power(apart, 4, 8)) / 4 : 0;
        }
        return sum;
    }
}
