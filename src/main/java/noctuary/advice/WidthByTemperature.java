package noctuary.advice;

import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.say;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.measure.Figure;
import noctuary.stats.TheilSen;

/** Star width over temperature from night to night. */
final class WidthByTemperature {
    private static final int FEWEST_NIGHTS = 6;

    private WidthByTemperature() {}

    /** Absent below six nights with temperatures. */
    static Optional<String> sentence(List<EntryContext> entries) {
        List<double[]> points = entries.stream().flatMap(e -> point(e).stream()).toList();
        if (points.size() < FEWEST_NIGHTS) {
            return Optional.empty();
        }
        TheilSen line = TheilSen.fit(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
        String range = say(
                "between %s and %s arcsec a degree, 95 %% interval over %s nights",
                fixed(line.low(), 2), fixed(line.high(), 2), points.size());
        if (!line.rises() && !line.falls()) {
            return Optional.of(say("From night to night star width does not follow the temperature (%s).", range));
        }
        return Optional.of(say(
                "From night to night stars are wider when it is %s (%s).", line.rises() ? "warmer" : "colder", range));
    }

    private static Optional<double[]> point(EntryContext entry) {
        OptionalDouble width = entry.number(Figure.FWHM_ARCSEC);
        OptionalDouble celsius = entry.traits().celsius();
        return width.isPresent() && celsius.isPresent()
                ? Optional.of(new double[] {celsius.getAsDouble(), width.getAsDouble()})
                : Optional.empty();
    }
}
