package noctuary.image;

/**
 * Weights of Keys's kernel with a = -1/2, widened {@code step} times, at {@value #PHASES} places within a pixel: a
 * position is rounded to half of such a place.
 *
 * @param taps pixels that the kernel lies over along one axis
 * @param weights {@code taps} for each place, which is how far the first of them lies behind the kernel's edge; their sum is 1
 */
record CubicKernel(double step, int taps, float[] weights) {
    static final int PHASES = 1024;

    /** @param step by how much the kernel is widened, at least 1 */
    static CubicKernel of(double step) {
        int taps = (int) Math.ceil(4 * step);
        float[] weights = new float[taps * (PHASES + 1)];
        for (int phase = 0; phase <= PHASES; phase++) {
            double sum = 0;
            for (int tap = 0; tap < taps; tap++) {
                sum += keys(step, phase, tap);
            }
            for (int tap = 0; tap < taps; tap++) {
                weights[phase * taps + tap] = (float) (keys(step, phase, tap) / sum);
            }
        }
        return new CubicKernel(step, taps, weights);
    }

    private static double keys(double step, int phase, int tap) {
        double t = Math.abs((phase / (double) PHASES + tap) / step - 2);
        return t < 1 ? (1.5 * t - 2.5) * t * t + 1 : t < 2 ? ((-0.5 * t + 2.5) * t - 4) * t + 2 : 0;
    }

    /** How far the kernel reaches to either side, pixels. */
    double reach() {
        return 2 * step;
    }
}
