package noctuary.stars.sim;

/** Best possible signal-to-noise ratio of a star's flux when its shape and place are known. */
final class SignalToNoise {
    private SignalToNoise() {}

    /** The flux in electrons that gives {@code snr} on a background variance a pixel (electrons²). */
    static double flux(MoffatStamp stamp, double fwhmPx, double variance, double snr) {
        int reach = (int) Math.ceil(4 * fwhmPx) + 2;
        double[] shares = new double[(2 * reach + 1) * (2 * reach + 1)];
        int n = 0;
        for (int y = -reach; y <= reach; y++) {
            for (int x = -reach; x <= reach; x++) {
                shares[n++] = stamp.share(x - 0.25, y + 0.25);
            }
        }
        double low = 0;
        double high = 1e9;
        for (int pass = 0; pass < 80; pass++) {
            double flux = (low + high) / 2;
            double information = 0;
            for (double p : shares) {
                information += p * p / (variance + flux * p);
            }
            if (flux * Math.sqrt(information) < snr) {
                low = flux;
            } else {
                high = flux;
            }
        }
        return (low + high) / 2;
    }
}
