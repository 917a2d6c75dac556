package noctuary.measure;

import java.nio.file.Path;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import noctuary.stars.sim.Dice;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/** A night of small frames with the same stars, to which a test plants an effect. Values are by number of the frame. */
final class PlantedNight {
    /** Whether light from (x, y), in pixels of the frame, is kept away from frame n. */
    interface Shade {
        boolean hides(int frame, double x, double y);
    }

    private static final int WIDTH = 200;
    private static final int HEIGHT = 150;
    private static final int STARS = 50;

    private final long seed;
    private final int frames;
    IntToDoubleFunction fwhmPx = n -> 2.8;
    IntToDoubleFunction light = n -> 1;
    IntToDoubleFunction ellipticity = n -> 0.05;
    IntToDoubleFunction sky = n -> 100;
    IntToDoubleFunction driftX = n -> 0;
    IntToDoubleFunction driftY = n -> 0;
    IntToDoubleFunction turnDeg = n -> 0;
    IntToDoubleFunction seconds = n -> 120;
    IntToDoubleFunction airmass = n -> 1.1;
    Shade shade = (n, x, y) -> false;

    PlantedNight(int frames, long seed) {
        this.frames = frames;
        this.seed = seed;
    }

    /** Clear and steady but for what every night has: seeing, sky and air that wander a little, dithered frames. */
    static PlantedNight clear(int frames, long seed) {
        PlantedNight night = new PlantedNight(frames, seed);
        Dice dice = new Dice(seed * 7919);
        double[] wander = new double[4 * frames];
        for (int i = 0; i < wander.length; i++) {
            wander[i] = dice.normal();
        }
        night.fwhmPx = n -> 2.8 * (1 + 0.04 * wander[4 * n]);
        night.light = n -> 1 + 0.02 * wander[4 * n + 1];
        night.driftX = n -> 3 * wander[4 * n + 2];
        night.driftY = n -> 3 * wander[4 * n + 3];
        return night;
    }

    NightCourse course(Path folder) {
        SmallJournal journal = new SmallJournal(folder);
        journal.entry("night", "rig: heron", "frames: [\"*.fits\"]");
        for (int n = 0; n < frames; n++) {
            journal.frame("night", String.format(Locale.ROOT, "%02d.fits", n + 1), frame(n));
        }
        return journal.sheet("night").courses().get(0);
    }

    private FrameDraft frame(int n) {
        SkySimulator simulator = new SkySimulator(WIDTH, HEIGHT, seed * 1000 + n)
                .sky(sky.applyAsDouble(n))
                .shape(StarShape.constant(fwhmPx.applyAsDouble(n), ellipticity.applyAsDouble(n), 30, 3.5));
        Dice dice = new Dice(seed);
        double turn = Math.toRadians(turnDeg.applyAsDouble(n));
        double throughput = light.applyAsDouble(n) * seconds.applyAsDouble(n) / 120;
        for (int star = 0; star < STARS; star++) {
            double x = (star % 10 + dice.uniform(0.15, 0.85)) * WIDTH / 10 - WIDTH / 2.0;
            double y = (star / 10 + dice.uniform(0.15, 0.85)) * HEIGHT / 5 - HEIGHT / 2.0;
            double electrons = 4000 * Math.pow(15, dice.uniform(0, 1)) * throughput;
            double atX = WIDTH / 2.0 + x * Math.cos(turn) - y * Math.sin(turn) + driftX.applyAsDouble(n);
            double atY = HEIGHT / 2.0 + x * Math.sin(turn) + y * Math.cos(turn) + driftY.applyAsDouble(n);
            if (!shade.hides(n, atX, atY)) {
                simulator.light(atX, atY, electrons);
            }
        }
        return FrameDraft.of(simulator.frame().plane())
                .card("IMAGETYP", "'LIGHT'")
                .card("EXPTIME", Double.toString(seconds.applyAsDouble(n)))
                .card("AIRMASS", Double.toString(airmass.applyAsDouble(n)))
                .card("DATE-OBS", String.format(Locale.ROOT, "'2025-05-02T%02d:%02d:00'", 20 + n / 4, n % 4 * 15));
    }
}
