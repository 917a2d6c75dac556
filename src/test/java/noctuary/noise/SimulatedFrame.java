package noctuary.noise;

import java.util.Random;
import noctuary.image.Plane;

/** A frame with known contents, built in steps from one seed. Levels in ADU, positions in pixels. */
public final class SimulatedFrame {
    private final int width;
    private final int height;
    private final double[] sky;
    private final Random random;

    public SimulatedFrame(int width, int height, long seed) {
        this.width = width;
        this.height = height;
        this.sky = new double[width * height];
        this.random = new Random(seed);
    }

    /** Adds {@code level}, rising by {@code slopeX} and {@code slopeY} over the whole field. */
    public SimulatedFrame sky(double level, double slopeX, double slopeY) {
        return add((x, y) -> level + slopeX * x / width + slopeY * y / height);
    }

    /** Multiplies everything so far by 1 - drop at the corners, falling with the square of the radius. */
    public SimulatedFrame vignette(double drop) {
        return multiply((x, y) -> 1 - drop * radius2(x, y));
    }

    private double radius2(double x, double y) {
        double dx = 2 * x / width - 1;
        double dy = 2 * y / height - 1;
        return (dx * dx + dy * dy) / 2;
    }

    /** Round Moffat stars (beta 3) whose fluxes follow N(>F) ~ 1/F from {@code faintestPeak} up. */
    public SimulatedFrame stars(int count, double fwhm, double faintestPeak) {
        double alpha2 = Math.pow(fwhm / 2, 2) / (Math.cbrt(2) - 1);
        for (int i = 0; i < count; i++) {
            double peak = Math.min(faintestPeak / (1 - random.nextDouble()), 60000);
            star(random.nextDouble() * width, random.nextDouble() * height, peak, alpha2);
        }
        return this;
    }

    private void star(double cx, double cy, double peak, double alpha2) {
        int reach = (int) Math.ceil(Math.sqrt(alpha2 * (Math.cbrt(peak / 0.02) - 1))) + 1;
        for (int y = Math.max(0, (int) cy - reach); y <= Math.min(height - 1, (int) cy + reach); y++) {
            for (int x = Math.max(0, (int) cx - reach); x <= Math.min(width - 1, (int) cx + reach); x++) {
                double r2 = (x - cx) * (x - cx) + (y - cy) * (y - cy);
                sky[y * width + x] += peak * Math.pow(1 + r2 / alpha2, -3);
            }
        }
    }

    /** Cloudy light with filaments, of {@code peak} at its brightest, over the middle of the field. */
    public SimulatedFrame nebula(double peak) {
        double[] phase = random.doubles(64, 0, 2 * Math.PI).toArray();
        return add((x, y) -> {
            double v = 6.0 * y / width + 0.7 * Math.sin(9.0 * x / width + phase[40]);
            double u = 6.0 * x / width + 0.7 * Math.sin(11.0 * y / width + phase[41]);
            double fold = 0;
            double size = 1;
            for (int k = 0; k < 7; k++, size *= 1.9) {
                double a = Math.sin(size * (u * Math.cos(phase[k]) + v * Math.sin(phase[k])) + phase[k + 8] + fold);
                double b = Math.cos(size * (u * Math.sin(phase[k + 16]) - v * Math.cos(phase[k + 16])) + phase[k + 24]);
                fold += (a + b) / (2 * Math.pow(size, 0.8));
            }
            double envelope = Math.exp(-3 * radius2(x, y) * 2);
            return peak * envelope * Math.pow(Math.max(0, 0.5 + 0.45 * fold), 2);
        });
    }

    /** White noise: electrons of gain 1 plus read noise, so variance = level / gain + read². */
    public SimulatedFrame photons(double electronsPerAdu, double readNoiseAdu) {
        return add((x, y) -> {
            double level = Math.max(0, sky[y * width + x]);
            return random.nextGaussian() * Math.sqrt(level / electronsPerAdu + readNoiseAdu * readNoiseAdu);
        });
    }

    public SimulatedFrame whiteNoise(double sigma) {
        return add((x, y) -> sigma * random.nextGaussian());
    }

    /** Every row its own normal offset. */
    public SimulatedFrame rowOffsets(double sigma) {
        double[] offset = random.doubles(height).toArray();
        for (int y = 0; y < height; y++) {
            offset[y] = sigma * random.nextGaussian();
        }
        return add((x, y) -> offset[y]);
    }

    public SimulatedFrame columnOffsets(double sigma) {
        double[] offset = new double[width];
        for (int x = 0; x < width; x++) {
            offset[x] = sigma * random.nextGaussian();
        }
        return add((x, y) -> offset[x]);
    }

    /** Single pixels, at least three apart, {@code above} the rest. */
    public SimulatedFrame singles(int count, double above) {
        boolean[] taken = new boolean[width * height];
        for (int i = 0; i < count; ) {
            int x = 3 + random.nextInt(width - 6);
            int y = 3 + random.nextInt(height - 6);
            if (!taken[y * width + x]) {
                mark(taken, x, y);
                sky[y * width + x] += above;
                i++;
            }
        }
        return this;
    }

    private void mark(boolean[] taken, int cx, int cy) {
        for (int y = cy - 3; y <= cy + 3; y++) {
            for (int x = cx - 3; x <= cx + 3; x++) {
                taken[y * width + x] = true;
            }
        }
    }

    /**
     * A fixed pattern of white noise that wandered {@code length} px along {@code angleDeg} while frames were combined,
     * of standard deviation {@code sigma}; each pixel of the pattern is spread over the two nearest in the track.
     */
    public SimulatedFrame streaks(double sigma, double angleDeg, int length) {
        int margin = length + 2;
        int wide = width + 2 * margin;
        double[] pattern = new double[wide * (height + 2 * margin)];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = random.nextGaussian();
        }
        double[] track = new double[width * height];
        double cos = Math.cos(Math.toRadians(angleDeg));
        double sin = Math.sin(Math.toRadians(angleDeg));
        for (int k = 0; k < length; k++) {
            addShifted(pattern, wide, margin + k * cos, margin + k * sin, track);
        }
        double sum2 = 0;
        for (double value : track) {
            sum2 += value * value;
        }
        double scale = sigma / Math.sqrt(sum2 / track.length);
        return add((x, y) -> scale * track[y * width + x]);
    }

    private void addShifted(double[] pattern, int wide, double dx, double dy, double[] into) {
        int x0 = (int) Math.floor(dx);
        int y0 = (int) Math.floor(dy);
        double fx = dx - x0;
        double fy = dy - y0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int i = (y + y0) * wide + x + x0;
                into[y * width + x] += (1 - fx) * (1 - fy) * pattern[i]
                        + fx * (1 - fy) * pattern[i + 1]
                        + (1 - fx) * fy * pattern[i + wide]
                        + fx * fy * pattern[i + wide + 1];
            }
        }
    }

    /** Light of {@code peak} in the corner at the first pixel, falling by e every {@code reach} px. */
    public SimulatedFrame glow(double peak, double reach) {
        return add((x, y) -> peak * Math.exp(-Math.hypot(x, y) / reach));
    }

    /** Everything so far dimmed by {@code depth} left of {@code share} of the width, over a soft edge. */
    public SimulatedFrame shadow(double depth, double share) {
        return multiply((x, y) -> 1 - depth / (1 + Math.exp((x - share * width) / (0.02 * width))));
    }

    /** Multiplies by the response of a GRBG mosaic's filters. */
    public SimulatedFrame grbg(double red, double green, double blue) {
        return multiply((x, y) -> (x + y) % 2 == 0 ? green : y % 2 == 0 ? red : blue);
    }

    public SimulatedFrame clip(double low, double high) {
        for (int i = 0; i < sky.length; i++) {
            sky[i] = Math.max(low, Math.min(high, sky[i]));
        }
        return this;
    }

    public SimulatedFrame add(Shape shape) {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                sky[y * width + x] += shape.at(x, y);
            }
        }
        return this;
    }

    public SimulatedFrame multiply(Shape shape) {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                sky[y * width + x] *= shape.at(x, y);
            }
        }
        return this;
    }

    /** A light for each pixel. */
    public interface Shape {
        double at(int x, int y);
    }

    /** Rounded to whole ADU and held within 0 to 65535. */
    public Plane toSixteenBit() {
        short[] stored = new short[sky.length];
        for (int i = 0; i < stored.length; i++) {
            stored[i] = (short) (Math.max(0, Math.min(65535, Math.round(sky[i]))) - 32768);
        }
        return Plane.ofStored(width, height, stored, 32768, 1);
    }

    public Plane toFloats() {
        float[] pixels = new float[sky.length];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = (float) sky[i];
        }
        return Plane.of(width, height, pixels);
    }
}
