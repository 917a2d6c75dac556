package noctuary.journal;

import java.nio.file.Path;
import java.util.Random;
import noctuary.image.Affine;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/** A journal with six attempts on one target, simulated, and a seventh that shows another part of the sky. */
final class SixAttempts {
    static final int WIDTH = 2300;
    static final int HEIGHT = 1700;

    /** Degrees, scale, mirrored (-1), light, FWHM. */
    private static final double[][] ATTEMPTS = {
        {0, 1, 1, 1, 3},
        {180, 1, 1, 2, 3.6},
        {4, 0.95, 1, 0.7, 2.8},
        {-7, 1, -1, 1.5, 4},
        {92, 0.9, 1, 1, 3.2},
        {1, 1, 1, 3, 2.6}
    };

    private SixAttempts() {}

    static void write(Path root) {
        SmallJournal journal = new SmallJournal(root);
        for (int i = 0; i < ATTEMPTS.length; i++) {
            attempt(journal, "attempt-" + (i + 1), i, 77, place(ATTEMPTS[i]));
        }
        attempt(journal, "elsewhere", 0, 4711, Affine.SAME);
    }

    public static void main(String[] args) {
        write(Path.of(args[0]));
    }

    private static void attempt(SmallJournal journal, String slug, int i, long stars, Affine map) {
        journal.entry(slug, "title: Number " + slug, "target: M 27", "stack: stack.fits")
                .frame(
                        slug,
                        "stack.fits",
                        FrameDraft.of(sky(ATTEMPTS[i], 100 + i, stars, map)
                                        .frame()
                                        .plane())
                                .card("EXPTIME", "600.0")
                                .card("NCOMBINE", "10")
                                .card("DATE-OBS", "'2025-0" + (i + 1) + "-10T22:00:00'"));
    }

    private static SkySimulator sky(double[] attempt, long seed, long stars, Affine map) {
        Affine back = map.inverse();
        SkySimulator sky = new SkySimulator(WIDTH, HEIGHT, seed)
                .shape(StarShape.constant(attempt[4], 0.05, 30, 3.5))
                .glow((x, y) -> 60 * attempt[3] * glow(back.x(x, y), back.y(x, y)));
        Random random = new Random(stars);
        for (int n = 0; n < 160; n++) {
            double x = WIDTH * random.nextDouble();
            double y = HEIGHT * random.nextDouble();
            sky.light(map.x(x, y), map.y(x, y), attempt[3] * 3000 * Math.exp(4 * random.nextDouble()));
        }
        return sky;
    }

    private static double glow(double x, double y) {
        double dx = (x - WIDTH / 2.0) / 300;
        double dy = (y - HEIGHT / 2.0) / 200;
        return Math.exp(-dx * dx - dy * dy);
    }

    /** Turned, enlarged and mirrored about the middle of the field. */
    private static Affine place(double[] attempt) {
        double c = attempt[1] * Math.cos(Math.toRadians(attempt[0]));
        double s = attempt[1] * Math.sin(Math.toRadians(attempt[0]));
        Affine turn = new Affine(c * attempt[2], -s, WIDTH / 2.0 + 9, s * attempt[2], c, HEIGHT / 2.0 - 6);
        return turn.after(Affine.shift(-WIDTH / 2.0, -HEIGHT / 2.0));
    }
}
