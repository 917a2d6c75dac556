package noctuary.sky;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The dark hours of one night: Sun's centre more than 18° below the horizon (astronomical night).
 *
 * @param begins absent where the night never gets dark
 * @param ends end of the last dark hour before the next noon
 * @param dark all dark time
 * @param moonless the part of it with the Moon's centre below the horizon, without refraction
 */
public record Darkness(Optional<Instant> begins, Optional<Instant> ends, Duration dark, Duration moonless) {
    /** Altitude of the Sun's centre at which astronomical night begins (definition of the US Naval Observatory). */
    public static final double ASTRONOMICAL_DEG = -18;

    private static final Duration STEP = Duration.ofMinutes(10);
    private static final long PRECISION_SECONDS = 1;

    /** From noon to noon in the zone, as {@link Night} names it. */
    public static Darkness of(LocalDate night, ZoneId zone, SkyPlace place) {
        Instant noon = night.atTime(LocalTime.NOON).atZone(zone).toInstant();
        Instant nextNoon = night.plusDays(1).atTime(LocalTime.NOON).atZone(zone).toInstant();
        ToDoubleFunction<Instant> sun = t -> Sun.at(t).from(place).altitudeDeg() - ASTRONOMICAL_DEG;
        ToDoubleFunction<Instant> moon = t -> Moon.at(t, place).fromSurface().altitudeDeg();
        List<Span> dark = below(sun, new Span(noon, nextNoon));
        List<Span> moonless =
                dark.stream().flatMap(span -> below(moon, span).stream()).toList();
        return new Darkness(
                dark.stream().findFirst().map(Span::from),
                dark.stream().reduce((first, last) -> last).map(Span::to),
                total(dark),
                total(moonless));
    }

    private record Span(Instant from, Instant to) {}

    /** Spans within which the function is negative. */
    private static List<Span> below(ToDoubleFunction<Instant> function, Span within) {
        List<Span> spans = new ArrayList<>();
        Instant start = function.applyAsDouble(within.from()) < 0 ? within.from() : null;
        Instant t = within.from();
        while (t.isBefore(within.to())) {
            Instant next = t.plus(STEP).isBefore(within.to()) ? t.plus(STEP) : within.to();
            boolean negative = function.applyAsDouble(next) < 0;
            if (negative && start == null) {
                start = crossing(function, t, next);
            } else if (!negative && start != null) {
                spans.add(new Span(start, crossing(function, t, next)));
                start = null;
            }
            t = next;
        }
        if (start != null) {
            spans.add(new Span(start, within.to()));
        }
        return spans;
    }

    /** Where the function changes sign, by halving. */
    private static Instant crossing(ToDoubleFunction<Instant> function, Instant from, Instant to) {
        boolean negative = function.applyAsDouble(from) < 0;
        Instant low = from;
        Instant high = to;
        while (Duration.between(low, high).toSeconds() > PRECISION_SECONDS) {
            Instant middle = low.plus(Duration.between(low, high).dividedBy(2));
            if (function.applyAsDouble(middle) < 0 == negative) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static Duration total(List<Span> spans) {
        return spans.stream().map(s -> Duration.between(s.from(), s.to())).reduce(Duration.ZERO, Duration::plus);
    }
}
