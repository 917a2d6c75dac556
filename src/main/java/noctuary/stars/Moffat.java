package noctuary.stars;

/**
 * The Moffat profile (1 + q)^-beta for one beta (Moffat 1969, A&amp;A 3, 455), tabulated in q to 1e-5 of itself, since
 * the fits ask for it some hundred million times.
 */
final class Moffat {
    private static final int BITS = 9;
    private static final int SHIFT = 52 - BITS;
    private static final long MASK = (1L << SHIFT) - 1;
    private static final double STEP = 1.0 / (1L << SHIFT);
    private static final int OCTAVES = 12;
    private static final int FIRST = 1023 << BITS;
    private static final int LAST = (OCTAVES << BITS) - 1;

    private final double beta;
    private final double[] table = new double[(OCTAVES << BITS) + 1];

    Moffat(double beta) {
        this.beta = beta;
        for (int i = 0; i < table.length; i++) {
            double v = Double.longBitsToDouble((long) (FIRST + i) << SHIFT);
            table[i] = Math.pow(v, -beta);
        }
    }

    double beta() {
        return beta;
    }

    /** (1 + q)^-beta for v = 1 + q. */
    double at(double v) {
        long bits = Double.doubleToRawLongBits(v);
        int i = Math.min(LAST, (int) (bits >>> SHIFT) - FIRST);
        double low = table[i];
        return low + (bits & MASK) * STEP * (table[i + 1] - low);
    }

    /** FWHM over the scale radius alpha. */
    double fwhmOverAlpha() {
        return 2 * Math.sqrt(Math.pow(2, 1 / beta) - 1);
    }

    /** Radius holding half the flux over the FWHM. */
    double halfFluxOverFwhm() {
        return Math.sqrt(Math.pow(2, 1 / (beta - 1)) - 1) / fwhmOverAlpha();
    }
}
