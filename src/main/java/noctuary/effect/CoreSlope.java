package noctuary.effect;

import java.util.List;

/**
 * How steeply a picture follows what a kernel makes of its origin, on noise no wider than the origin's. Sharpened noise
 * reaches farther, and a stretch bends within it: its mean slope there is not the one that the origin's own noise meets.
 *
 * @param slope picture over kernel of the origin
 * @param error standard error of it
 */
record CoreSlope(double slope, double error) {
    /**
     * Pixels are weighted so that those under the kernel spread as the origin does, if both are Gaussian.
     *
     * @param pairs of what the kernel makes of the origin, less its level, and the picture
     * @param wider noise under the kernel over the origin's, above 1
     */
    static CoreSlope of(List<double[]> pairs, double wider) {
        double squares = pairs.stream().mapToDouble(p -> p[0] * p[0]).sum() / pairs.size();
        double less = (wider * wider - 1) / (2 * squares);
        double[] sums = new double[5];
        for (double[] p : pairs) {
            double w = Math.exp(-less * p[0] * p[0]);
            sums[0] += w;
            sums[1] += w * p[0];
            sums[2] += w * p[1];
            sums[3] += w * p[0] * p[0];
            sums[4] += w * p[0] * p[1];
        }
        double middle = sums[1] / sums[0];
        double level = sums[2] / sums[0];
        double spread = sums[3] - sums[1] * middle;
        double slope = (sums[4] - sums[1] * level) / spread;
        double off = 0;
        for (double[] p : pairs) {
            double w = Math.exp(-less * p[0] * p[0]);
            double moved = w * (p[0] - middle) * (p[1] - level - slope * (p[0] - middle));
            off += moved * moved;
        }
        return new CoreSlope(slope, Math.sqrt(off) / spread);
    }
}
