package noctuary.advice;

import java.util.Comparator;

/**
 * One thing that could be removed, and what that would give.
 *
 * @param loss share of the star width, or of the noise, that would go with it, where and when it acts most: 0 to 1
 */
record Limit(double loss, Finding finding) {
    /** Share below which nothing is said: a tenth of width or noise hardly shows. A choice, not physics. */
    static final double STANDS_OUT = 0.1;

    /** What was cut off cannot be brought back by anything else, so it goes before every share. */
    static final double LOST_FOR_GOOD = 1;

    static final Comparator<Limit> LARGEST_FIRST = Comparator.comparingDouble((Limit limit) -> -limit.loss())
            .thenComparing(limit -> limit.finding().id());

    boolean standsOut() {
        return loss >= STANDS_OUT;
    }

    /** Share of a root of summed squares that goes when one of them goes. */
    static double lossWithout(double total, double term) {
        return 1 - Math.sqrt(Math.max(0, total * total - term * term)) / total;
    }
}
