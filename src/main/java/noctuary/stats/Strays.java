package noctuary.stats;

import org.hipparchus.special.Erf;

/**
 * Values that scatter normally about a place, a share of which strays upwards by an exponential amount besides: the
 * density of one is (1 - share) N(0, sigma²) + share EMG(0, sigma², reach), the second an exponentially modified normal
 * distribution (Grushka 1972, Anal. Chem. 44, 1733).
 *
 * @param share of the values that stray, 0 up to 1
 * @param reach mean of the exponential amount, positive
 */
public record Strays(double share, double reach) {
    private static final double LOG_ROOT_TWO_PI = 0.5 * Math.log(2 * Math.PI);
    /** Above this argument the tail of the normal distribution is taken from its continued fraction. */
    private static final double FAR = 5;

    /**
     * What is to be expected of one value.
     *
     * @param chance that it strays
     * @param amount by which it then strays, mean
     * @param variance of that amount
     */
    public record Expected(double chance, double amount, double variance) {
        /** Mean by which the value strays, whether it does or not. */
        public double mean() {
            return chance * amount;
        }

        /** Variance of it. */
        public double spread() {
            return chance * (variance + (1 - chance) * amount * amount);
        }
    }

    /**
     * @param residual value less its place
     * @param sigma of its normal scatter
     */
    public Expected of(double residual, double sigma) {
        double u = sigma / reach - residual / sigma;
        double logMills = logMills(u);
        double hazard = Math.exp(-logMills);
        double odds = share / (1 - share) * Math.exp(Math.log(sigma / reach) + logMills);
        double chance = odds < Double.MAX_VALUE ? odds / (1 + odds) : 1;
        return new Expected(
                chance, sigma * (hazard - u), sigma * sigma * Math.max(0, 1 + u * hazard - hazard * hazard));
    }

    /** Logarithm of the density of a value. */
    public double logDensity(double residual, double sigma) {
        double z = residual / sigma;
        double logOdds = Math.log(share / (1 - share) * sigma / reach) + logMills(sigma / reach - z);
        double more = logOdds > 30 ? logOdds : Math.log1p(Math.exp(logOdds));
        return Math.log(1 - share) - z * z / 2 - Math.log(sigma) - LOG_ROOT_TWO_PI + more;
    }

    /** Logarithm of the upper tail of the standard normal distribution over its density. */
    static double logMills(double u) {
        if (u < FAR) {
            return Math.log(Erf.erfc(u / Math.sqrt(2)) / 2) + u * u / 2 + LOG_ROOT_TWO_PI;
        }
        double fraction = u;
        for (int k = 12; k >= 1; k--) {
            fraction = u + k / fraction;
        }
        return -Math.log(fraction);
    }
}
