package noctuary.advice;

import java.util.Arrays;
import noctuary.stats.Robust;
import noctuary.stats.StudentTest;

/**
 * What other nights of the same kind gave, for telling the unusual from the usual: a value is unusual when it lies
 * outside the interval in which one more such night falls 199 times of 200 (prediction interval of logarithms, one
 * side).
 *
 * @param others positive values, a night each
 */
record Usual(double[] others) {
    /** Below this number any one night could look unusual by chance. */
    static final int FEWEST = 6;

    private static final double RARE = 0.995;

    boolean enough() {
        return others.length >= FEWEST;
    }

    int nights() {
        return others.length;
    }

    double median() {
        return Robust.median(others);
    }

    boolean unusuallyHigh(double value) {
        return enough() && distance(value) > StudentTest.quantile(RARE, others.length - 1);
    }

    boolean unusuallyLow(double value) {
        return enough() && -distance(value) > StudentTest.quantile(RARE, others.length - 1);
    }

    private double distance(double value) {
        double[] logs = Arrays.stream(others).map(Math::log).toArray();
        double mean = Arrays.stream(logs).average().orElseThrow();
        double squares = Arrays.stream(logs).map(v -> (v - mean) * (v - mean)).sum();
        double sd = Math.sqrt(squares / (logs.length - 1));
        return (Math.log(value) - mean) / (sd * Math.sqrt(1 + 1.0 / logs.length));
    }
}
