package noctuary.stats;

/** Small published data sets that several tests share. */
final class Samples {
    /** Ten and five values of Hollander &amp; Wolfe, Nonparametric Statistical Methods, table 4.1. */
    static final double[] PERMEABILITY_TERM = {.80, .83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, .73, 1.46};

    static final double[] PERMEABILITY_EARLY = {1.15, .88, .90, .74, 1.21};

    /** Student (1908), extra hours of sleep under two drugs, as in R's data set sleep. */
    static final double[] SLEEP_ONE = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2};

    static final double[] SLEEP_TWO = {1.9, .8, 1.1, .1, -.1, 4.4, 5.5, 1.6, 4.6, 3.4};

    /** Six and five nights, worked in the project's handbook with scipy. */
    static final double[] NIGHTS_BEFORE = {3.42, 3.10, 3.75, 3.28, 3.55, 3.05};

    static final double[] NIGHTS_AFTER = {2.88, 3.01, 2.70, 2.95, 3.20};

    private Samples() {}

    static double[] differences(double[] a, double[] b) {
        double[] d = new double[a.length];
        java.util.Arrays.setAll(d, i -> a[i] - b[i]);
        return d;
    }

    /** Darwin's maize, crossed less self-fertilised height of each pair, eighths of an inch (from memory). */
    static final double[] MAIZE_EIGHTHS = {49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48};
}
