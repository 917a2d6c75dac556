package noctuary.draw;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Noise against exposure, both axes in powers: what averages out falls along a straight line with the root of the time,
 * which is drawn from the first point.
 *
 * @param up what the vertical axis counts, with its unit
 * @param points in any order; those without values above zero are left out
 */
public record NoiseByTime(String title, String up, List<Point> points) implements Chart {
    static final String WHOLE = "noise";
    static final String FRESH = "differs from frame to frame";
    static final String ROOT = "by the root of time";

    public NoiseByTime {
        points = points.stream()
                .filter(p -> Digits.isPositive(p.seconds()))
                .filter(p -> Digits.isPositive(p.noise()) && Digits.isPositive(p.fresh()))
                .sorted(Comparator.comparingDouble(Point::seconds))
                .toList();
    }

    /**
     * @param seconds of exposure in the mean
     * @param noise of a pixel of the mean
     * @param fresh of that, what differs from frame to frame
     */
    public record Point(double seconds, double noise, double fresh) {
        String time() {
            return Digits.hours(seconds / 3600);
        }
    }

    @Override
    public String svg(String id, Form form) {
        return new RootPlot(this, form).draw(new Alternative(id, title, description()));
    }

    /** What the first point and the root of the time foretell for another. */
    double root(Point point) {
        Point first = points.get(0);
        return first.fresh() * Math.sqrt(first.seconds() / point.seconds());
    }

    private String description() {
        return points.isEmpty()
                ? "Nothing measured yet."
                : up + " against exposure, both in powers. "
                        + points.stream().map(this::sentence).collect(Collectors.joining(" "));
    }

    private String sentence(Point p) {
        return p.time() + ": " + WHOLE + " " + Digits.significant(p.noise(), 3) + ", " + FRESH + " "
                + Digits.significant(p.fresh(), 3) + ", " + ROOT + " " + Digits.significant(root(p), 3) + ".";
    }
}
