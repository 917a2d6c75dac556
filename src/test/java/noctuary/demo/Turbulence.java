package noctuary.demo;

/** Smooth random fields on the plane, the same on every machine: gradient noise and sums of it over scales. */
final class Turbulence {
    private static final double LACUNARITY = 2.03;
    private static final double TURN_COS = 0.8;
    private static final double TURN_SIN = 0.6;

    private final int seed;

    Turbulence(int seed) {
        this.seed = seed;
    }

    /** Gradient noise with unit lattice, mean 0, within about -1 to 1. */
    double at(double x, double y) {
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        double fx = x - i;
        double fy = y - j;
        double u = fade(fx);
        double v = fade(fy);
        double low = mix(u, slope(i, j, fx, fy), slope(i + 1, j, fx - 1, fy));
        double high = mix(u, slope(i, j + 1, fx, fy - 1), slope(i + 1, j + 1, fx - 1, fy - 1));
        return 1.45 * mix(v, low, high);
    }

    /** Sum over octaves of halving amplitude, within about -1 to 1. */
    double fractal(double x, double y, int octaves) {
        double sum = 0;
        double amplitude = 0.5;
        double px = x;
        double py = y;
        for (int k = 0; k < octaves; k++) {
            sum += amplitude * at(px + 17.3 * k, py - 9.1 * k);
            double turned = LACUNARITY * (TURN_COS * px - TURN_SIN * py);
            py = LACUNARITY * (TURN_SIN * px + TURN_COS * py);
            px = turned;
            amplitude *= 0.52;
        }
        return sum * 1.25;
    }

    /** Thin bright ridges on dark ground, 0 to 1, as in filaments and shock fronts. */
    double ridged(double x, double y, int octaves) {
        double sum = 0;
        double amplitude = 0.55;
        double weight = 1;
        double px = x;
        double py = y;
        for (int k = 0; k < octaves; k++) {
            double ridge = 1 - Math.min(1, 1.5 * Math.abs(at(px - 31.7 * k, py + 13.9 * k)));
            ridge = ridge * ridge * weight;
            sum += amplitude * ridge;
            weight = Math.min(1, 1.6 * ridge + 0.15);
            double turned = LACUNARITY * (TURN_COS * px - TURN_SIN * py);
            py = LACUNARITY * (TURN_SIN * px + TURN_COS * py);
            px = turned;
            amplitude *= 0.55;
        }
        return Math.min(1, sum);
    }

    /** Ridges in a plane that is itself stirred by noise: filaments that bend and part. */
    double stirred(double x, double y, int octaves, double stir) {
        double dx = fractal(x * 0.7 + 5.2, y * 0.7 + 1.3, 3);
        double dy = fractal(x * 0.7 - 8.7, y * 0.7 + 2.8, 3);
        return ridged(x + stir * dx, y + stir * dy, octaves);
    }

    private double slope(int i, int j, double dx, double dy) {
        int h = i * 0x27d4eb2f ^ j * 0x165667b1 ^ seed * 0x9e3779b9;
        h = (h ^ h >>> 15) * 0x85ebca6b;
        h = (h ^ h >>> 13) * 0xc2b2ae35;
        h ^= h >>> 16;
        double gx = (h & 0xffff) / 32767.5 - 1;
        double gy = (h >>> 16) / 32767.5 - 1;
        return gx * dx + gy * dy;
    }

    private static double fade(double t) {
        return t * t * t * (t * (t * 6 - 15) + 10);
    }

    private static double mix(double t, double a, double b) {
        return a + t * (b - a);
    }
}
