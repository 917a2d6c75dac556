package noctuary.measure;

import java.util.Arrays;
import noctuary.stats.TheilSen;

/** Magnitudes that each frame of a series lost against the clearest one, and what airmass may explain of them. */
record LightLoss(double[] magnitudes, double[] errors, double[] explained, int clearest) {
    /** Magnitudes an airmass that a hazy but cloudless sky may take: common practice, no source. */
    private static final double EXTINCTION = 0.4;
    /** Magnitudes below which nothing is said, and the least number of standard errors. */
    private static final double LEAST = 0.15;

    private static final double LEAST_ERRORS = 5;

    /** Every frame of the series must have a transparency. */
    static LightLoss of(CourseSeries series) {
        double[] light = series.values(f -> f.relativeTransparency().getAsDouble());
        int clearest = 0;
        for (int i = 1; i < light.length; i++) {
            clearest = light[i] > light[clearest] ? i : clearest;
        }
        double best = light[clearest];
        double[] lost =
                Arrays.stream(light).map(t -> -2.5 * Math.log10(t / best)).toArray();
        double[] errors = series.values(f -> 2.5
                / Math.log(10)
                * f.transparencyError().getAsDouble()
                / f.relativeTransparency().getAsDouble());
        return new LightLoss(lost, errors, explained(series, lost, clearest), clearest);
    }

    /** Beyond what airmass may explain. */
    double excess(int frame) {
        return magnitudes[frame] - explained[frame];
    }

    boolean clear(int frame) {
        return excess(frame) > LEAST && excess(frame) > LEAST_ERRORS * error(frame);
    }

    private double error(int frame) {
        return Math.hypot(errors[frame], errors[clearest]);
    }

    private static double[] explained(CourseSeries series, double[] lost, int clearest) {
        if (series.airmassKnown()) {
            double least = series.frames().get(clearest).airmass().getAsDouble();
            return series.values(f -> EXTINCTION * Math.max(0, f.airmass().getAsDouble() - least));
        }
        TheilSen line = series.trend(lost);
        return Arrays.stream(series.hours()).map(h -> Math.max(0, line.at(h))).toArray();
    }
}
