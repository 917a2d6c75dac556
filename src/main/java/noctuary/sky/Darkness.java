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

    /** All dark time of one night, without asking for the Moon. */
    public static Duration dark(LocalDate night, ZoneId zone, SkyPlace place) {
        Instant noon = night.atTime(LocalTime.NOON).atZone(zone).toInstant();
        Instant nextNoon = night.plusDays(1).atTime(LocalTime.NOON).atZone(zone).toInstant();
        return total(below(t -> Sun.at(t).from(place).altitudeDeg() - ASTRONOMICAL_DEG, new Span(noon, nextNoon)));
    }

    private record Span(Instant from, Instant to) {
        Instant middle() {
            return from.plus(Duration.between(from, to).dividedBy(2));
        }
    }

    /** Spans within which the function is negative. */
    private static List<Span> below(ToDoubleFunction<Instant> function, Span within) {
        List<Instant> edges = edges(function, within);
        List<Span> spans = new ArrayList<>();
        for (int i = 1; i < edges.size(); i++) {
            Span span = new Span(edges.get(i - 1), edges.get(i));
            if (function.applyAsDouble(span.middle()) < 0) {
                spans.add(span);
            }
        }
        return spans;
    }

    /** Both ends, and every change of sign between them that lasts more than a step. */
    private static List<Instant> edges(ToDoubleFunction<Instant> function, Span within) {
        List<Instant> edges = new ArrayList<>(List.of(within.from()));
        Instant t = within.from();
        boolean negative = function.applyAsDouble(t) < 0;
        while (t.isBefore(within.to())) {
            Instant next = t.plus(STEP).isBefore(within.to()) ? t.plus(STEP) : within.to();
            boolean nextNegative = function.applyAsDouble(next) < 0;
            if (nextNegative != negative) {
                edges.add(crossing(function, new Span(t, next)));
            }
            negative = nextNegative;
            t = next;
        }
        edges.add(within.to());
        return edges;
    }

    /** Where the function changes sign, by halving. */
    private static Instant crossing(ToDoubleFunction<Instant> function, Span within) {
        boolean negative = function.applyAsDouble(within.from()) < 0;
        Span span = within;
        while (Duration.between(span.from(), span.to()).toSeconds() > PRECISION_SECONDS) {
            Instant middle = span.middle();
            boolean before = function.applyAsDouble(middle) < 0 == negative;
            span = before ? new Span(middle, span.to()) : new Span(span.from(), middle);
        }
        return span.to();
    }

    private static Duration total(List<Span> spans) {
        return spans.stream().map(s -> Duration.between(s.from(), s.to())).reduce(Duration.ZERO, Duration::plus);
    }
}
