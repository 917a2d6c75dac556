package noctuary.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Supplier;
import java.util.stream.Stream;
import noctuary.image.Plane;
import noctuary.stars.StarField;
import org.assertj.core.data.Offset;

/** A sky of level 1000 with white noise of sigma 10, round Moffat stars and a broad nebula, all known. */
final class PlantedSky {
    static final int SIDE = 640;
    static final double LEVEL = 1000;
    static final double SIGMA = 10;
    static final double FWHM = 3.6;
    static final double BETA = 4;

    /** @param fwhm of the stars, px; {@code sigma} of a pixel's noise */
    record Seeing(double fwhm, double sigma) {
        static final Seeing USUAL = new Seeing(FWHM, SIGMA);

        /** A Gaussian core of this width under a matched filter: flux = snr sigma sqrt(4 pi) FWHM / 2.3548, nearly. */
        double flux(double snr) {
            return snr * sigma * Math.sqrt(4 * Math.PI) * fwhm / 2.3548;
        }

        /** Adds a star's light, integrated over the pixels, or takes it off. */
        void add(float[] pixels, double[] star, double times) {
            double alpha2 = Math.pow(fwhm / 2, 2) / (Math.pow(2, 1 / BETA) - 1);
            double norm = times * star[2] * (BETA - 1) / (Math.PI * alpha2) / (FINE * FINE);
            int cx = (int) Math.rint(star[0]);
            int cy = (int) Math.rint(star[1]);
            for (int y = Math.max(0, cy - REACH); y <= Math.min(SIDE - 1, cy + REACH); y++) {
                for (int x = Math.max(0, cx - REACH); x <= Math.min(SIDE - 1, cx + REACH); x++) {
                    double sum = 0;
                    for (int k = 0; k < FINE * FINE; k++) {
                        double dx = x + (k % FINE - 1) / (double) FINE - star[0];
                        double dy = y + (k / FINE - 1) / (double) FINE - star[1];
                        double grown = 1 + (dx * dx + dy * dy) / alpha2;
                        sum += 1 / (grown * grown * grown * grown);
                    }
                    pixels[y * SIDE + x] += (float) (norm * sum);
                }
            }
        }
    }

    private static final int REACH = 26;
    private static final int FINE = 3;

    private final List<double[]> stars = new ArrayList<>();
    private final float[] pixels = new float[SIDE * SIDE];
    private final DoubleBinaryOperator nebula;
    private final Seeing seeing;
    private final Map<String, Side> sides = new ConcurrentHashMap<>();
    private final Map<String, float[]> starless = new ConcurrentHashMap<>();

    /** @param count of stars on a loose grid, signal-to-noise ratios evenly in logarithm from {@code least} to 600 */
    PlantedSky(long seed, int count, double least) {
        this(seed, count, least, 60);
    }

    /** @param height of a broad round nebula */
    PlantedSky(long seed, int count, double least, double height) {
        this(seed, count, least, (x, y) -> height * broad(x, y));
    }

    /** @param nebula light over the sky at x, y */
    PlantedSky(long seed, int count, double least, DoubleBinaryOperator nebula) {
        this(seed, count, least, nebula, Seeing.USUAL);
    }

    PlantedSky(long seed, int count, double least, DoubleBinaryOperator nebula, Seeing seeing) {
        this.nebula = nebula;
        this.seeing = seeing;
        Random dice = new Random(seed);
        int across = (int) Math.ceil(Math.sqrt(count));
        double pace = (SIDE - 60.0) / across;
        for (int i = 0; i < count; i++) {
            double x = 30 + (i % across + 0.2 + 0.6 * dice.nextDouble()) * pace;
            double y = 30 + (i / across + 0.2 + 0.6 * dice.nextDouble()) * pace;
            double snr = least * Math.pow(600 / least, ((i * 37) % count + 0.5) / count);
            stars.add(new double[] {x, y, seeing.flux(snr), snr});
        }
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] =
                    (float) (LEVEL + seeing.sigma() * dice.nextGaussian() + nebula.applyAsDouble(i % SIDE, i / SIDE));
        }
        stars.forEach(star -> seeing.add(pixels, star, 1));
    }

    /** A round cloud of height 1 and sigma 70 px right above the middle. */
    static double broad(double x, double y) {
        return Math.exp(-(Math.pow(x - 420, 2) + Math.pow(y - 200, 2)) / (2 * 70 * 70));
    }

    /** A cloud of height 1 over most of the field, with waves of {@code share} of it, 12 px long across and down. */
    static double rippled(double x, double y, double share) {
        double cloud = Math.exp(-(Math.pow(x - 300, 2) + Math.pow(y - 260, 2)) / (2 * 110 * 110));
        return cloud * (1 + share * (Math.sin(2 * Math.PI * x / 6) + Math.sin(2 * Math.PI * y / 12)));
    }

    /** The same as a nebula of height 800 with a tenth of it in waves. */
    static double waves(double x, double y) {
        return 800 * rippled(x, y, 0.1);
    }

    /** {@link #broad} of height 60. */
    static double faint(double x, double y) {
        return 60 * broad(x, y);
    }

    /** Sky and nebula and stars without noise. */
    float[] noiseless() {
        float[] calm = new float[SIDE * SIDE];
        for (int i = 0; i < calm.length; i++) {
            calm[i] = (float) (LEVEL + nebula.applyAsDouble(i % SIDE, i / SIDE));
        }
        stars.forEach(star -> seeing.add(calm, star, 1));
        return calm;
    }

    static double flux(double snr) {
        return Seeing.USUAL.flux(snr);
    }

    /** x, y, flux, signal-to-noise ratio. */
    List<double[]> stars() {
        return stars;
    }

    /** Places farther than 16 px from every star and the border, and well apart. */
    List<double[]> emptyPlaces(int count) {
        List<double[]> places = new ArrayList<>();
        for (int i = 0; places.size() < count; i++) {
            double[] place = {30 + i * 97.3 % 580, 30 + i * 61.7 % 580};
            boolean free = Stream.concat(stars.stream(), places.stream())
                    .allMatch(s -> Math.hypot(s[0] - place[0], s[1] - place[1]) > 16);
            if (free) {
                places.add(place);
            }
        }
        return places;
    }

    float[] pixels() {
        return pixels.clone();
    }

    static void add(float[] pixels, double[] star, double times) {
        Seeing.USUAL.add(pixels, star, times);
    }

    static void assertNear(Amount amount, double expected, Offset<Double> tolerance) {
        assertThat(amount.why()).isEmpty();
        assertThat(amount.value().getAsDouble()).isCloseTo(expected, tolerance);
    }

    Seeing seeing() {
        return seeing;
    }

    /** The pixels without the stars. */
    float[] starless() {
        return starless.computeIfAbsent("", k -> {
                    float[] out = pixels.clone();
                    stars.forEach(star -> seeing.add(out, star, -1));
                    return out;
                })
                .clone();
    }

    /** What was measured of a plane that this sky becomes, measured once for each name. */
    Side side(String name, Supplier<float[]> plane) {
        return sides.computeIfAbsent(name, k -> side(plane.get()));
    }

    static Plane plane(float[] pixels) {
        return Plane.of(SIDE, SIDE, pixels);
    }

    static Side side(float[]... planes) {
        StarField field = StarField.measure(
                plane(planes[planes.length / 2]), new StarField.Conditions(Optional.empty(), OptionalDouble.empty()));
        return new Side(SIDE, SIDE, planes.length, field.stars());
    }

    /** The effect of going from linear pixels to a picture of shares of white. */
    static Effect effect(float[] origin, float[]... picture) {
        return effect(side(origin), origin, picture);
    }

    /** The effect of going from this sky to a picture of shares of white. */
    Effect effectTo(float[]... picture) {
        return effect(side("linear", this::pixels), pixels, picture);
    }

    private static Effect effect(Side from, float[] origin, float[]... picture) {
        List<Plane> planes = new ArrayList<>();
        for (float[] each : picture) {
            planes.add(plane(each));
        }
        return Effect.measure(
                from,
                () -> new Pixels(List.of(plane(origin)), Double.POSITIVE_INFINITY, false),
                side(picture),
                () -> new Pixels(planes, 1, false));
    }

    /** The effect of going from one picture of shares of white to the next. */
    static Effect effectOfVersion(Side from, float[] origin, float[] picture) {
        return Effect.measure(
                from,
                () -> new Pixels(List.of(plane(origin)), 1, false),
                side(picture),
                () -> new Pixels(List.of(plane(picture)), 1, false));
    }
}
