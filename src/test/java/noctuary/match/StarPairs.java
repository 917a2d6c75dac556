package noctuary.match;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import noctuary.stars.Star;

/**
 * Two simulated star lists of one field and the transform between them.
 *
 * @param truth from the first to the second list, without noise
 * @param shared the stars that are in both
 */
record StarPairs(List<Star> from, List<Star> to, Alignment truth, List<Shared> shared) {
    private static final double FWHM_PX = 3;
    private static final double FLOOR_PX = 0.03;

    /**
     * A star of both lists.
     *
     * @param x true place in the first list
     * @param sigma of each coordinate in either list, pixels of that list
     */
    record Shared(double x, double y, Star from, Star to, double sigma) {}

    /**
     * Both lists show the whole field: 15 to 3,000 stars each (even in the logarithm), up to 40 % of each list's own,
     * scale 0.2 to 5 (even in the logarithm), any rotation, half of them mirrored.
     *
     * <p>Fluxes follow N(&gt;F) ∝ 1/F down to a signal-to-noise ratio of 8 and differ by 10 % between the lists.
     * Positions are off by 0.03 px and 0.6 FWHM / SNR (King 1983, from memory) on each axis, FWHM 3 px: the least error
     * of a centre where the sky makes the noise, √2 FWHM / (2.3548 SNR) (handbook 3.4); where the star's own light makes
     * it, it is less by √2.
     */
    static StarPairs whole(Random random) {
        int count = (int) Math.round(15 * Math.pow(200, random.nextDouble()));
        double own = 0.4 * random.nextDouble();
        double width = 1500 + 4500 * random.nextDouble();
        double height = width * (0.6 + 0.4 * random.nextDouble());
        Alignment truth = transform(random, width, height);
        int both = (int) Math.ceil(count * (1 - own));
        List<Shared> shared = new ArrayList<>();
        List<Star> from = new ArrayList<>();
        List<Star> to = new ArrayList<>();
        for (int i = 0; i < 2 * count - both; i++) {
            double x = width * random.nextDouble();
            double y = height * random.nextDouble();
            double snr = 8 / (1 - 0.999 * random.nextDouble());
            if (i < count) {
                from.add(star(random, x, y, snr));
            }
            if (i < both || i >= count) {
                double[] p = truth.apply(x, y);
                to.add(star(random, p[0], p[1], snr));
            }
            if (i < both) {
                shared.add(new Shared(x, y, last(from), last(to), sigma(snr)));
            }
        }
        Collections.shuffle(from, random);
        Collections.shuffle(to, random);
        return new StarPairs(from, to, truth, shared);
    }

    /**
     * Two cameras of 3000 by 2000 pixels on one sky, scale 0.2 to 5: the narrower shows a part of what the wider shows,
     * and half of it or more; a tenth of the stars there are in one list only.
     */
    static StarPairs cameras(Random random) {
        double wider = Math.pow(5, random.nextDouble());
        boolean firstIsWider = random.nextBoolean();
        int wideStars = (int) (25 * wider * wider * Math.pow(120 / (wider * wider), random.nextDouble()));
        double offsetX = (1500 - 900 / wider) * (2 * random.nextDouble() - 1);
        double offsetY = (1000 - 600 / wider) * (2 * random.nextDouble() - 1);
        Alignment intoNarrow = centred(random, wider, 1500 + offsetX, 1000 + offsetY);
        Alignment truth = firstIsWider ? intoNarrow : intoNarrow.inverse();
        List<Star> wide = new ArrayList<>();
        List<Star> narrow = new ArrayList<>();
        List<Shared> shared = new ArrayList<>();
        for (int i = 0; i < 7 * wideStars; i++) {
            double[] p = {7000 * random.nextDouble() - 2000, 6000 * random.nextDouble() - 2000};
            double[] q = intoNarrow.apply(p[0], p[1]);
            double snr = 8 / (1 - 0.999 * random.nextDouble());
            boolean inWide = onSensor(p) && random.nextDouble() > 0.05;
            boolean inNarrow = onSensor(q) && random.nextDouble() > 0.05;
            if (inWide) {
                wide.add(star(random, p[0], p[1], snr));
            }
            if (inNarrow) {
                narrow.add(star(random, q[0], q[1], snr));
            }
            if (inWide && inNarrow) {
                shared.add(
                        firstIsWider
                                ? new Shared(p[0], p[1], last(wide), last(narrow), sigma(snr))
                                : new Shared(q[0], q[1], last(narrow), last(wide), sigma(snr)));
            }
        }
        return firstIsWider ? new StarPairs(wide, narrow, truth, shared) : new StarPairs(narrow, wide, truth, shared);
    }

    /** Root mean square distance between found and true transform over the shared stars, pixels of the finer image. */
    double errorPx(Alignment found) {
        double sum = 0;
        for (Shared star : shared) {
            double[] p = found.apply(star.x(), star.y());
            double[] q = truth.apply(star.x(), star.y());
            sum += Math.pow(p[0] - q[0], 2) + Math.pow(p[1] - q[1], 2);
        }
        return Math.sqrt(sum / shared.size()) * finer();
    }

    /** Pixels of the finer image in one of the second list. */
    double finer() {
        return Math.max(1, 1 / truth.scale());
    }

    static Star star(double x, double y, double flux) {
        return new Star(x, y, flux, FWHM_PX, 0, 0, 1.5, Math.sqrt(flux), flux / 10, Set.of());
    }

    private static double sigma(double snr) {
        return Math.hypot(FLOOR_PX, 0.6 * FWHM_PX / snr);
    }

    private static Star last(List<Star> stars) {
        return stars.get(stars.size() - 1);
    }

    private static Star star(Random random, double x, double y, double snr) {
        double sigma = sigma(snr);
        double flux = snr * snr * Math.exp(0.1 * random.nextGaussian());
        return star(x + sigma * random.nextGaussian(), y + sigma * random.nextGaussian(), flux);
    }

    private static Alignment transform(Random random, double width, double height) {
        double scale = 0.2 * Math.pow(25, random.nextDouble());
        return new Alignment(
                scale,
                360 * random.nextDouble() - 180,
                random.nextBoolean(),
                width * (2 * random.nextDouble() - 1),
                height * (2 * random.nextDouble() - 1),
                0,
                0);
    }

    /** Lays (x, y) on the middle of a sensor of 3000 by 2000 pixels. */
    private static Alignment centred(Random random, double scale, double x, double y) {
        Alignment turn = new Alignment(scale, 360 * random.nextDouble() - 180, random.nextBoolean(), 0, 0, 0, 0);
        double[] p = turn.apply(x, y);
        return new Alignment(scale, turn.rotationDeg(), turn.mirrored(), 1500 - p[0], 1000 - p[1], 0, 0);
    }

    private static boolean onSensor(double[] p) {
        return p[0] >= 0 && p[0] < 3000 && p[1] >= 0 && p[1] < 2000;
    }
}
