package noctuary.stars;

/**
 * Tells stars from single hot pixels and cosmic rays: over 5 x 5 pixels, does one lit pixel explain the data better
 * than the narrowest star there could be, at its best place within the pixel?
 */
final class PointTest {
    private static final int SIDE = 5;
    private static final int PIXELS = SIDE * SIDE;

    private final Sampling sampling;
    private final double[][] templates;

    PointTest(Sampling sampling, double fwhm) {
        this.sampling = sampling;
        double reach = sampling.all() ? 0.5 : 1;
        int steps = sampling.all() ? 5 : 9;
        templates = new double[steps * steps][PIXELS];
        MoffatModel model = new MoffatModel(new Moffat(3.5));
        for (int t = 0; t < templates.length; t++) {
            double x = reach * (2.0 * (t % steps) / (steps - 1) - 1);
            double y = reach * (2.0 * (t / steps) / (steps - 1) - 1);
            model.set(new double[] {1, x, y, Math.log(fwhm), 0, 0, 0});
            for (int i = 0; i < PIXELS; i++) {
                templates[t][i] = model.value(i % SIDE - 2, i / SIDE - 2);
            }
        }
    }

    /**
     * @param patch 5 x 5 values above the sky around pixel (x, y)
     * @return whether a star explains them better than a lit pixel
     */
    boolean star(float[] patch, int x, int y) {
        double single = 0;
        for (int j = 1; j <= 3; j++) {
            for (int i = 1; i <= 3; i++) {
                double v = patch[j * SIDE + i];
                if (v > 0 && sampling.counts(x + i - 2, y + j - 2)) {
                    single = Math.max(single, v * v);
                }
            }
        }
        double best = 0;
        for (double[] template : templates) {
            best = Math.max(best, explained(patch, template, x, y));
        }
        return best > single;
    }

    private double explained(float[] patch, double[] template, int x, int y) {
        double product = 0;
        double square = 0;
        for (int i = 0; i < PIXELS; i++) {
            if (sampling.counts(x + i % SIDE - 2, y + i / SIDE - 2)) {
                product += patch[i] * template[i];
                square += template[i] * template[i];
            }
        }
        return product > 0 ? product * product / square : 0;
    }
}
