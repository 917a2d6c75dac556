package noctuary.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import noctuary.fact.Printed;
import noctuary.stats.Robust;

/** Frames in which the same stars gave less light than airmass explains, all over the field. */
final class CloudRule {
    /** A rise of the background counts from this share of the noise of a pixel. */
    private static final double RISE = 0.1;

    private CloudRule() {}

    static Optional<Observation> look(CourseSeries all) {
        CourseSeries series = all.only(f -> f.relativeTransparency().isPresent());
        if (!series.enough()) {
            return Optional.empty();
        }
        LightLoss loss = LightLoss.of(series);
        List<Integer> dipped = series.where(loss::clear);
        return dipped.isEmpty() ? Optional.empty() : Optional.of(observation(series, loss, dipped));
    }

    /** Background of the frames over the others of equal exposure, in ADU; NaN when it cannot be told. */
    static double rise(CourseSeries series, List<Integer> dipped) {
        double[] inside = levels(series, dipped);
        double[] outside = levels(series, series.where(i -> !dipped.contains(i)));
        boolean equal = series.frames().stream()
                        .mapToDouble(f -> f.exposureSeconds().orElse(Double.NaN))
                        .distinct()
                        .count()
                == 1;
        return equal ? Robust.median(inside) - Robust.median(outside) : Double.NaN;
    }

    static boolean clearlyUp(CourseSeries series, double rise) {
        return rise
                > RISE * Robust.median(series.values(f -> f.backgroundNoise().orElse(Double.POSITIVE_INFINITY)));
    }

    private static double[] levels(CourseSeries series, List<Integer> which) {
        return which.stream()
                .map(series.frames()::get)
                .filter(f -> f.backgroundLevel().isPresent())
                .mapToDouble(f -> f.backgroundLevel().getAsDouble())
                .toArray();
    }

    private static Observation observation(CourseSeries series, LightLoss loss, List<Integer> dipped) {
        double rise = rise(series, dipped);
        String how = clearlyUp(series, rise)
                ? "while the background rose: looks like cloud."
                : "but the background did not clearly rise: looks like thin cloud or haze.";
        String text = "The same stars gave less light all over the field in " + dipped.size() + " of " + series.size()
                + " frames, " + how;
        int worst = dipped.stream().max(Comparator.comparing(loss::excess)).orElseThrow();
        CourseFrame frame = series.frames().get(worst);
        CourseFrame clearest = series.frames().get(loss.clearest());
        double share = frame.relativeTransparency().getAsDouble()
                / clearest.relativeTransparency().getAsDouble();
        double error = share * Math.hypot(relative(frame), relative(clearest));
        String evidence = "worst at " + CourseSeries.clock(frame) + ": " + Printed.withError(100 * share, 100 * error)
                + " % of the light of the clearest frame, on " + frame.commonStars()
                + " common stars; at most " + Printed.number(100 * (1 - Math.pow(10, -0.4 * loss.explained()[worst])))
                + " % is explained by airmass; " + frame.starsFound() + " stars found, " + clearest.starsFound()
                + " in the clearest"
                + (Double.isNaN(rise) ? "" : "; background " + Printed.number(rise) + " ADU higher than in the rest")
                + "; frames of " + series.clocks(dipped);
        return new Observation("cloud", text, evidence);
    }

    private static double relative(CourseFrame frame) {
        return frame.transparencyError().getAsDouble()
                / frame.relativeTransparency().getAsDouble();
    }
}
