package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.draw.StrengthPlot;
import noctuary.measure.ChoiceSheet;
import noctuary.measure.ChoiceSheet.Use;
import noctuary.site.page.Drawing;

/** A step's strength against what it gained and cost. */
final class ChoiceCharts {
    private static final String NOISE = "noise taken";
    private static final String STARS = "faint stars lost";
    private static final String CUT = "background cut to black";
    private static final String FOUND = "found in the pixels";
    private static final List<String> SERIES = List.of(NOISE, STARS, CUT);
    private static final int FEWEST = 2;

    private final Address page;

    ChoiceCharts(Address page) {
        this.page = page;
    }

    /** Null where fewer than two settings are numbers with something measured. */
    Drawing of(ChoiceSheet choice, String id) {
        if (choice.name().equals("stretch")) {
            return stretch(choice, id);
        }
        List<StrengthPlot.Point> points = new ArrayList<>();
        boolean black = choice.name().contains("black");
        if (!black) {
            add(points, choice, NOISE, u -> scaled(u.noiseRatio(), -100, 100));
        }
        add(points, choice, STARS, u -> scaled(u.faintLost(), 100, 0));
        if (black) {
            add(points, choice, CUT, Use::backgroundCutPercent);
        }
        String title = "What " + choice.name() + " took, by its setting";
        StrengthPlot plot = new StrengthPlot(title, "setting of " + choice.name(), "taken, %", SERIES, points);
        return drawing(plot, id, "Each version at its setting: what was taken away, in per cent.");
    }

    /** The strength that the note tells against the one found in the pixels. */
    private Drawing stretch(ChoiceSheet choice, String id) {
        List<StrengthPlot.Point> points = new ArrayList<>();
        add(points, choice, FOUND, Use::stretchFound);
        StrengthPlot plot = new StrengthPlot(
                "Strength of the stretch, noted and found", "strength noted", "strength found", List.of(FOUND), points);
        return drawing(plot, id, "The strength that the note tells, and the one that the pixels show.");
    }

    private static Drawing drawing(StrengthPlot plot, String id, String caption) {
        long settings = plot.points().stream()
                .mapToDouble(StrengthPlot.Point::x)
                .distinct()
                .count();
        return settings < FEWEST ? null : Charts.drawing(plot, id + "-chart", caption);
    }

    private void add(
            List<StrengthPlot.Point> points, ChoiceSheet choice, String series, Function<Use, OptionalDouble> of) {
        for (Use use : choice.uses()) {
            OptionalDouble value = of.apply(use);
            if (use.strength().isPresent() && value.isPresent()) {
                points.add(new StrengthPlot.Point(
                        use.strength().getAsDouble(),
                        value.getAsDouble(),
                        series,
                        use.entry().entry().title().value() + ", "
                                + use.version().version().name(),
                        page.to(Address.entry(use.entry().entry().slug()))));
            }
        }
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor, double plus) {
        return value.isPresent() ? OptionalDouble.of(factor * value.getAsDouble() + plus) : OptionalDouble.empty();
    }
}
