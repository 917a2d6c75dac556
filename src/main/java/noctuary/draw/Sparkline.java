package noctuary.draw;

import java.util.Arrays;
import java.util.List;
import noctuary.stats.Robust;

/**
 * A line the size of a word: the course of a number in order of time, the middle half of its values as a band, the last
 * value as a dot.
 *
 * @param values in order; NaN where one is missing, which leaves a gap
 */
public record Sparkline(String title, String unit, List<Double> values) implements Chart {
    private static final double WIDTH = 160;
    private static final double HEIGHT = 30;
    private static final double MARGIN = 6;

    public Sparkline {
        values = List.copyOf(values);
    }

    @Override
    public String both(String id) {
        return svg(id, Form.NARROW);
    }

    @Override
    public String svg(String id, Form form) {
        double[] known =
                values.stream().mapToDouble(v -> v).filter(Double::isFinite).toArray();
        Svg svg = Svg.sheet(new Alternative(id, title, description(known)), "chart spark", WIDTH, HEIGHT, 13);
        if (known.length == 0) {
            svg.line("hair", MARGIN, HEIGHT / 2, WIDTH - MARGIN, HEIGHT / 2);
            return svg.end();
        }
        double low = Arrays.stream(known).min().orElseThrow();
        double high = Arrays.stream(known).max().orElseThrow();
        Scale x = new Scale(0, Math.max(values.size() - 1, 1), MARGIN, WIDTH - MARGIN);
        Scale y = new Scale(low, high, HEIGHT - MARGIN, MARGIN);
        double upper = y.at(Robust.quantile(known, 0.75));
        double lower = y.at(Robust.quantile(known, 0.25));
        svg.rect("band", MARGIN, upper, WIDTH - 2 * MARGIN, lower - upper);
        svg.path("s1 course", course(x, y));
        int last = lastKnown();
        svg.circle("s1 solid", x.at(last), y.at(values.get(last)), 3);
        return svg.end();
    }

    private Trace course(Scale x, Scale y) {
        Trace trace = new Trace();
        boolean pen = false;
        for (int i = 0; i < values.size(); i++) {
            double value = values.get(i);
            if (Double.isFinite(value) && pen) {
                trace.line(x.at(i), y.at(value));
            } else if (Double.isFinite(value)) {
                trace.move(x.at(i), y.at(value));
            }
            pen = Double.isFinite(value);
        }
        return trace;
    }

    private int lastKnown() {
        int last = values.size() - 1;
        while (!Double.isFinite(values.get(last))) {
            last--;
        }
        return last;
    }

    private String description(double[] known) {
        if (known.length == 0) {
            return "No values.";
        }
        String after = unit.isEmpty() ? "" : " " + unit;
        return known.length + " values, median " + Digits.significant(Robust.median(known), 3) + after + ", last "
                + Digits.significant(known[known.length - 1], 3) + after + ".";
    }
}
