package noctuary.demo;

import java.util.Random;

/** A sensor's fixed pattern that drifted through an undithered night: noise drawn out along one direction. */
final class Streaks {
    private static final double LENGTH = 42;
    private static final double ANGLE = StrictMath.toRadians(27);

    private Streaks() {}

    /** ADU to add to each pixel; all zero on nights without. */
    static float[] of(PlannedEntry entry, int width, int height) {
        float[] pattern = new float[width * height];
        if (entry.streaks() == 0) {
            return pattern;
        }
        Random random = new Random(entry.slug().hashCode() + 17L);
        float[] grain = new float[width * height];
        for (int at = 0; at < grain.length; at++) {
            grain[at] = (float) random.nextGaussian();
        }
        double scale = entry.streaks() * Math.sqrt(LENGTH);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double sum = 0;
                for (int k = 0; k < LENGTH; k++) {
                    int i = Math.floorMod((int) Math.round(x + k * StrictMath.cos(ANGLE)), width);
                    int j = Math.floorMod((int) Math.round(y + k * StrictMath.sin(ANGLE)), height);
                    sum += grain[j * width + i];
                }
                pattern[y * width + x] = (float) (scale * sum / LENGTH);
            }
        }
        return pattern;
    }
}
