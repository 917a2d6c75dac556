package noctuary.advice;

import java.time.LocalDate;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import noctuary.image.Plane;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import noctuary.stars.sim.Dice;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/**
 * One night on one target as the camera would have stored it: single frames and their mean, with one trouble planted or
 * none. Seeing, sky and guiding wander as they do from night to night.
 */
final class PlantedImage {
    /** What is planted. */
    enum Trouble {
        NONE("limit-none"),
        SEEING("limit-seeing"),
        GUIDING("limit-guiding"),
        FOCUS("limit-focus"),
        TILT("limit-tilt"),
        SPACING("limit-spacing"),
        SKY("limit-sky"),
        EXPOSURE("limit-exposure"),
        STREAKS("limit-streaks"),
        CLIPPING("limit-clipping");

        /** The finding that names it. */
        final String finding;

        Trouble(String finding) {
            this.finding = finding;
        }
    }

    private static final int WIDTH = 320;
    private static final int HEIGHT = 240;
    private static final int STARS = 96;
    private static final double ARCSEC_PER_PX = 206.264806 * 4.6 / 712.5;
    private static final double SECONDS = 600;
    private static final double GAIN = 1.2;
    private static final double READ_NOISE = 3.6;

    private final Trouble trouble;
    private final long seed;
    private final Dice dice;
    private final int frames;
    private final double seeing;
    private final double sky;
    private final double guiding;
    private final boolean guidingTyped;
    private final double direction;
    private final double[] wander;
    /** Where between mild and strong the trouble lies, 0 to 1; below 0 between none at all, at -1, and mild. */
    private final double strength;

    /** Anywhere between mild and strong. */
    PlantedImage(Trouble trouble, long seed) {
        this(trouble, seed, OptionalDouble.empty());
    }

    /** @param share of a mild trouble, 0 to 1 */
    static PlantedImage faint(Trouble trouble, long seed, double share) {
        return new PlantedImage(trouble, seed, OptionalDouble.of(share));
    }

    private PlantedImage(Trouble trouble, long seed, OptionalDouble share) {
        this.trouble = trouble;
        this.seed = seed;
        dice = new Dice(seed * 7919 + 17);
        double drawn = dice.uniform(0, 1);
        strength = share.isPresent() ? share.getAsDouble() - 1 : drawn;
        frames = trouble == Trouble.EXPOSURE ? (int) Math.rint(between(6, 2, 2)) : 5 + dice.below(3);
        seeing = 2.6 * Math.exp(0.08 * dice.normal()) * (trouble == Trouble.SEEING ? between(1, 1.5, 2) : 1);
        sky = 1.5 * SECONDS * Math.exp(0.1 * dice.normal()) * (trouble == Trouble.SKY ? between(1, 2.5, 5) : 1);
        guiding = trouble == Trouble.GUIDING ? between(0.5, 1.4, 2.2) : 0.5 + 0.08 * dice.normal();
        guidingTyped = dice.below(2) == 0;
        direction = dice.uniform(-180, 180);
        wander = new double[8];
        for (int i = 0; i < wander.length; i++) {
            wander[i] = dice.normal();
        }
    }

    private double between(double none, double mild, double strong) {
        return strength < 0 ? mild + (mild - none) * strength : mild + (strong - mild) * strength;
    }

    /** The rig and site of all such nights. */
    static void prepare(SmallJournal journal) {
        journal.file(
                "rigs/heron.md",
                "---",
                "name: Heron",
                "optics: {aperture: 150 mm, focal length: 750 mm, reducer: 0.95, back focus: 55 mm}",
                "camera: {pixel: 4.6 µm, width: 320, height: 240, read noise: 3.6 e, gain: 1.2 e/ADU}",
                "---");
    }

    void write(SmallJournal journal, String slug, int day) {
        String typed =
                guidingTyped ? String.format(Locale.ROOT, "guiding: {rms: %.2f arcsec}", guiding) : "# no guiding line";
        journal.entry(slug, "rig: heron", "target: M 13", "frames: [\"l*.fits\"]", "stack: stack.fits", typed);
        for (int n = 0; n < frames; n++) {
            journal.frame(
                    slug,
                    "l" + n + ".fits",
                    cards(FrameDraft.of(frame(n)), day, n).card("EXPTIME", "600.0"));
        }
        journal.frame(
                slug,
                "stack.fits",
                cards(FrameDraft.of(stack()), day, 0).card("EXPTIME", "600.0").card("NCOMBINE", "" + frames));
    }

    private FrameDraft cards(FrameDraft draft, int day, int n) {
        String date = LocalDate.of(2025, 1, 1).plusDays(day).toString();
        return draft.card("IMAGETYP", "'LIGHT'")
                .card("FILTER", "'L'")
                .card("AIRMASS", String.format(Locale.ROOT, "%.3f", 1.1 + 0.01 * n))
                .card("DATE-OBS", String.format(Locale.ROOT, "'%sT%02d:%02d:00'", date, 20 + n / 4, n % 4 * 15));
    }

    private Plane frame(int n) {
        double pedestal = trouble == Trouble.CLIPPING ? -(sky - between(3.2, 1.2, 0.2) * Math.sqrt(sky)) / GAIN : 300;
        SkySimulator simulator = new SkySimulator(WIDTH, HEIGHT, seed * 100 + n)
                .sky(sky)
                .camera(GAIN, READ_NOISE, pedestal, 60000)
                .shape(shape(n));
        plant(simulator, 1);
        return simulator.frame().plane();
    }

    /** The mean of the frames: as many electrons as all of them, divided by their number. */
    private Plane stack() {
        SkySimulator simulator = new SkySimulator(WIDTH, HEIGHT, seed * 100 + 99)
                .sky(sky * frames)
                .camera(GAIN * frames, READ_NOISE * Math.sqrt(frames), 300, 60000)
                .shape(shape(frames / 2));
        if (trouble == Trouble.STREAKS) {
            simulator.glow(streaks(between(0, 0.25, 0.45) * Math.sqrt(sky * frames)));
        }
        plant(simulator, frames);
        return simulator.frame().plane();
    }

    /** Fixed-pattern noise drawn out over twelve steps in one direction, of that standard deviation. */
    private DoubleBinaryOperator streaks(double sigma) {
        Dice pattern = new Dice(seed * 31);
        int wide = WIDTH + 80;
        double[] white = new double[wide * (HEIGHT + 80)];
        for (int i = 0; i < white.length; i++) {
            white[i] = pattern.normal();
        }
        int steps = 12;
        double dx = Math.cos(Math.toRadians(direction));
        double dy = Math.sin(Math.toRadians(direction));
        return (x, y) -> {
            double sum = 0;
            for (int k = 0; k < steps; k++) {
                int atX = (int) Math.round(x + 40 + k * dx);
                int atY = (int) Math.round(y + 40 + k * dy);
                sum += white[atY * wide + atX];
            }
            return sigma * sum / Math.sqrt(steps);
        };
    }

    private void plant(SkySimulator simulator, double times) {
        Dice field = new Dice(seed);
        for (int star = 0; star < STARS; star++) {
            double x = (star % 12 + field.uniform(0.2, 0.8)) * WIDTH / 12;
            double y = (star / 12 + field.uniform(0.2, 0.8)) * HEIGHT / 8;
            simulator.light(x, y, 8000 * Math.pow(12, field.uniform(0, 1)) * times);
        }
    }

    private StarShape shape(int n) {
        double air = seeing * Math.pow(1.1 + 0.01 * n, 0.6) * (1 + 0.02 * wander[n % wander.length]) / ARCSEC_PER_PX;
        double airy = 0.778 / ARCSEC_PER_PX;
        double round = Math.hypot(air, airy);
        double defocus = trouble == Trouble.FOCUS ? between(0, 0.8, 1.4) * round * n / (frames - 1.0) : 0;
        double along = 2.3548 * guiding / ARCSEC_PER_PX;
        return (x, y) -> {
            double u = 2 * x / WIDTH - 1;
            double v = (2 * y / HEIGHT - 1) * HEIGHT / WIDTH;
            double r2 = (u * u + v * v) / (1 + Math.pow((double) HEIGHT / WIDTH, 2));
            double lean = trouble == Trouble.TILT ? between(0, 0.2, 0.35) * across(u, v) : 0;
            double spread = trouble == Trouble.SPACING ? between(0, 0.6, 1.1) * round * r2 : 0;
            double minor = Math.hypot(Math.hypot(round * (1 + lean), defocus), spread);
            double major = Math.hypot(minor, along);
            return new StarShape.At(Math.sqrt(minor * major), 1 - minor / major, 25, 3.5);
        };
    }

    private double across(double u, double v) {
        return u * Math.cos(Math.toRadians(direction)) + v * Math.sin(Math.toRadians(direction));
    }
}
