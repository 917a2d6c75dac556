package noctuary.draw;

import java.util.ArrayList;
import java.util.List;
import noctuary.stats.Robust;

/** A stretch of time without a frame, much longer than the usual step from one frame to the next; seconds. */
record Gap(double from, double to) {
    private static final double TIMES_USUAL = 3;

    /** @param times ascending */
    static List<Gap> in(double[] times) {
        List<Gap> gaps = new ArrayList<>();
        double[] steps = new double[Math.max(0, times.length - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = times[i + 1] - times[i];
        }
        double limit = TIMES_USUAL * Robust.median(steps);
        for (int i = 0; i < steps.length; i++) {
            if (steps[i] > limit) {
                gaps.add(new Gap(times[i], times[i + 1]));
            }
        }
        return gaps;
    }

    boolean parts(double earlier, double later) {
        return earlier <= from && later >= to;
    }
}
