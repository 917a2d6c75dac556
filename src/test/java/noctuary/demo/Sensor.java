package noctuary.demo;

import java.util.Random;

/** Turns light into counts: shot noise, dark current, read noise, hot pixels, full well, gain, whole numbers. */
final class Sensor {
    private static final int PEDESTAL = 400;

    private final DemoRig rig;

    Sensor(DemoRig rig) {
        this.rig = rig;
    }

    /** Sigma of the empty sky in one frame, ADU, for the plane of that rate. */
    double noiseAdu(double skyRate, double seconds) {
        double electrons = (skyRate + rig.darkEPerS()) * seconds;
        return Math.sqrt(electrons + rig.readNoiseE() * rig.readNoiseE()) / rig.gainEPerAdu();
    }

    /** One raw frame; a mosaic camera sees at each pixel one of the three planes. */
    int[] frame(Scene scene, double seconds, Random random) {
        int[] counts = new int[scene.width() * scene.height()];
        double[] heat = heat();
        for (int y = 0; y < scene.height(); y++) {
            for (int x = 0; x < scene.width(); x++) {
                int at = y * scene.width() + x;
                double electrons = (scene.planes()[plane(x, y)][at] + rig.darkEPerS() + heat[at]) * seconds;
                electrons += Math.sqrt(electrons) * random.nextGaussian() + rig.readNoiseE() * random.nextGaussian();
                electrons = Math.min(electrons, rig.fullWellE());
                counts[at] =
                        (int) Math.max(0, Math.min(4095, Math.round(electrons / rig.gainEPerAdu() + rig.offsetAdu())));
            }
        }
        return counts;
    }

    /** Which plane a pixel of the mosaic sees: RGGB from the first stored pixel. */
    private int plane(int x, int y) {
        return rig.colour() ? (x & 1) + (y & 1) : 0;
    }

    /** Electrons a second of the sensor's hot pixels, the same every night. */
    private double[] heat() {
        Random random = new Random(rig.instrument().hashCode());
        double[] heat = new double[rig.width() * rig.height()];
        for (int n = 0; n < rig.hotPixels(); n++) {
            heat[random.nextInt(heat.length)] = 1.2 * StrictMath.exp(1.1 * random.nextGaussian());
        }
        return heat;
    }

    /**
     * The mean of {@code count} calibrated, aligned frames, balanced so that a white star is white, on a pedestal.
     *
     * @param scale counts of the stack for one count of a frame
     */
    int[][] stack(Scene scene, PlannedEntry entry, Passband[] bands, double scale, Random random) {
        float[] pattern = Streaks.of(entry, scene.width(), scene.height());
        int[][] planes = new int[bands.length][];
        for (int p = 0; p < bands.length; p++) {
            int[] counts = new int[scene.width() * scene.height()];
            double balance = bands.length == 3 ? scale / rig.response()[p] : scale;
            double frames = entry.count() * share(p);
            for (int at = 0; at < counts.length; at++) {
                double electrons = (scene.planes()[p][at] + rig.darkEPerS()) * entry.seconds();
                double noise = Math.sqrt((electrons + rig.readNoiseE() * rig.readNoiseE()) / frames);
                double mean = Math.min(electrons, rig.fullWellE()) - rig.darkEPerS() * entry.seconds();
                double adu = (mean + noise * random.nextGaussian()) / rig.gainEPerAdu() + pattern[at];
                counts[at] = (int) Math.max(0, Math.min(65535, Math.round(adu * balance + PEDESTAL)));
            }
            planes[p] = counts;
        }
        return planes;
    }

    /** Share of the frames in which a given pixel of a plane was seen. */
    double share(int plane) {
        if (!rig.colour()) {
            return 1;
        }
        return plane == Glow.GREEN ? 0.5 : 0.25;
    }

    /**
     * Counts of the stack for one of a frame: the whole number, at most 16, that leaves a noise of about 1.25 counts.
     */
    double scale(Scene scene, PlannedEntry entry) {
        int middle = scene.planes().length / 2;
        double sigma = noiseAdu(scene.skyRate()[middle], entry.seconds()) / Math.sqrt(entry.count() * share(middle));
        return Math.max(1, Math.min(15, Math.round(1.25 / sigma)));
    }
}
