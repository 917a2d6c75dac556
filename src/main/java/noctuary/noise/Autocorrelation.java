package noctuary.noise;

/**
 * How alike the noise of a frame is at a distance: the mean product of two pixels of the background, both free of
 * stars, over the mean square, for every displacement up to {@value #REACH} px. Taken on quiet tiles spread over the
 * field.
 */
final class Autocorrelation {
    static final int REACH = 30;

    private final double[] rho;

    private Autocorrelation(double[] rho) {
        this.rho = rho;
    }

    /**
     * Of the sum over the given tiles. Pixels that lost the mean of their line are less alike along it, by one over the
     * pixels of the line; that is given back.
     */
    static Autocorrelation of(FlatTile.Power[] powers) {
        int side = QuietTile.SIDE;
        float[] re = new float[side * side];
        float[] im = new float[side * side];
        double rows = 0;
        double columns = 0;
        for (FlatTile.Power power : powers) {
            for (int i = 0; i < re.length; i++) {
                re[i] += power.pixels()[i];
                im[i] += power.mask()[i];
            }
            rows += power.rows();
            columns += power.columns();
        }
        new Fourier(side).transform(re, im);
        double[] rho = new double[(2 * REACH + 1) * (2 * REACH + 1)];
        double pixels = im[0] / ((double) side * side) / 4;
        for (int dy = -REACH; dy <= REACH; dy++) {
            for (int dx = -REACH; dx <= REACH; dx++) {
                int i = (dy & side - 1) * side + (dx & side - 1);
                double lost = (dy == 0 ? rows / pixels : 0) + (dx == 0 ? columns / pixels : 0);
                rho[(dy + REACH) * (2 * REACH + 1) + dx + REACH] = re[i] / im[i] / (re[0] / im[0]) + lost;
            }
        }
        return new Autocorrelation(rho);
    }

    double at(int dx, int dy) {
        return rho[(dy + REACH) * (2 * REACH + 1) + dx + REACH];
    }
}
