package noctuary.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Random stars that are always the same for the same target. */
final class StarCatalogue {
    private static final double BRIGHTEST = 7.5;
    private static final double FAINTEST = 20.2;
    private static final double STEP = 0.05;
    private static final int RINGS = 4000;

    private StarCatalogue() {}

    /**
     * Field stars within a disc. Counts rise towards the plane of the Galaxy (order of magnitude from memory of star
     * counts: at magnitude 15 about 120 a square degree at the pole and 2000 in the plane).
     *
     * @param thinning share of the counts kept, below 1 where a dark cloud or a bright centre stands before them
     */
    static List<CatalogueStar> field(long seed, double galacticLatitudeDeg, double radiusArcsec, double thinning) {
        Random random = new Random(seed);
        double squareDegrees = Math.PI * StrictMath.pow(radiusArcsec / 3600, 2);
        List<CatalogueStar> stars = new ArrayList<>();
        double owed = random.nextDouble();
        for (double mag = BRIGHTEST; mag < FAINTEST; mag += STEP) {
            double more = countBelow(mag + STEP, galacticLatitudeDeg) - countBelow(mag, galacticLatitudeDeg);
            owed += more * squareDegrees * thinning * (0.7 + 0.6 * random.nextDouble());
            for (; owed >= 1; owed--) {
                stars.add(anywhere(random, radiusArcsec, mag + STEP * random.nextDouble()));
            }
        }
        return stars;
    }

    /** Stars a square degree brighter than {@code mag}. */
    static double countBelow(double mag, double galacticLatitudeDeg) {
        double m = mag - 12;
        double pole = 1.1 + 0.36 * m - 0.010 * m * m;
        double plane = 2.1 + 0.43 * m - 0.008 * m * m;
        double weight = StrictMath.exp(-Math.abs(galacticLatitudeDeg) / 18);
        return StrictMath.pow(10, pole + weight * (plane - pole));
    }

    /**
     * A globular cluster: places by King's profile, giants and a blue horizontal branch above a steep main sequence.
     */
    static List<CatalogueStar> globular(long seed, int count, double coreArcsec, double tidalArcsec) {
        Random random = new Random(seed);
        double[] within = new double[RINGS + 1];
        for (int k = 0; k < RINGS; k++) {
            double r = (k + 0.5) * tidalArcsec / RINGS;
            within[k + 1] = within[k] + r * ClusterHaze.king(r, coreArcsec, tidalArcsec);
        }
        List<CatalogueStar> stars = new ArrayList<>(count);
        for (int n = 0; n < count; n++) {
            int place = Arrays.binarySearch(within, random.nextDouble() * within[RINGS]);
            int ring = place < 0 ? -place - 2 : place;
            stars.add(member(random, (ring + random.nextDouble()) * tidalArcsec / RINGS));
        }
        return stars;
    }

    private static CatalogueStar member(Random random, double radiusArcsec) {
        double theta = 2 * Math.PI * random.nextDouble();
        double mag =
                Math.max(11.9 + 0.5 * random.nextDouble(), 20.6 + StrictMath.log10(1 - random.nextDouble()) / 0.37);
        double colour = mag < 14.8 ? 1.35 - 0.17 * (mag - 12) : 0.72;
        if (mag > 14.3 && mag < 15.6 && random.nextDouble() < 0.55) {
            colour = -0.05;
        }
        colour += 0.07 * random.nextGaussian();
        return CatalogueStar.of(
                radiusArcsec * StrictMath.cos(theta), radiusArcsec * StrictMath.sin(theta), mag, colour);
    }

    private static CatalogueStar anywhere(Random random, double radiusArcsec, double mag) {
        double r = radiusArcsec * Math.sqrt(random.nextDouble());
        double theta = 2 * Math.PI * random.nextDouble();
        double pick = random.nextDouble();
        double colour = pick < 0.22 ? 0.15 : pick < 0.68 ? 0.65 : pick < 0.93 ? 1.1 : 1.5;
        colour += 0.16 * random.nextGaussian();
        return CatalogueStar.of(r * StrictMath.cos(theta), r * StrictMath.sin(theta), mag, colour);
    }
}
