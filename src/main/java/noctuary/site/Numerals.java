package noctuary.site;

import java.util.Locale;
import java.util.OptionalDouble;
import noctuary.draw.Digits;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;

/** Numbers as printed: a fixed count of decimals a unit, a true minus sign, a space that does not break. */
final class Numerals {
    private static final char NO_BREAK_SPACE = '\u00a0';
    private static final char MINUS = '\u2212';

    private static final long[] TENS = {1, 10, 100, 1_000, 10_000};

    private Numerals() {}

    /** Halves are rounded away from zero, as the shortest decimal number that stands for the value has them. */
    static String fixed(double value, int decimals) {
        double scaled = decimals < TENS.length ? Math.abs(value) * TENS[decimals] : Double.NaN;
        if (Digits.roundsAlike(scaled)) {
            return fixed(value < 0, Math.round(scaled), decimals);
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        boolean zero = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return text.startsWith("-") ? (zero ? "" : MINUS) + text.substring(1) : text;
    }

    private static String fixed(boolean negative, long scaled, int decimals) {
        long tens = TENS[decimals];
        String text = decimals == 0
                ? Long.toString(scaled)
                : scaled / tens + "." + Long.toString(tens + scaled % tens).substring(1);
        return negative && scaled > 0 ? MINUS + text : text;
    }

    static String fixed(OptionalDouble value, int decimals) {
        return value.isPresent() ? fixed(value.getAsDouble(), decimals) : "";
    }

    /** Value, standard error where known, unit. */
    static String of(Quantity quantity) {
        if (quantity.unit() == Unit.SECOND) {
            return duration(quantity.value());
        }
        int decimals = decimals(quantity);
        String number = fixed(quantity.value(), decimals);
        if (quantity.standardError().isPresent()) {
            number += " ± " + fixed(quantity.standardError().getAsDouble(), decimals);
        }
        return withUnit(number, quantity.unit());
    }

    static String withUnit(String number, Unit unit) {
        if (unit.symbol().isEmpty()) {
            return number;
        }
        return unit == Unit.DEGREE ? number + "°" : number + NO_BREAK_SPACE + unit.symbol();
    }

    /** As {@code 4 h 12 min}, {@code 36 min} or, below two minutes, {@code 90 s}. */
    static String duration(double seconds) {
        if (seconds < 120) {
            return trimmed(seconds, 1) + NO_BREAK_SPACE + "s";
        }
        long minutes = Math.round(seconds / 60);
        String rest = minutes % 60 + "" + NO_BREAK_SPACE + "min";
        if (minutes < 60) {
            return rest;
        }
        String hours = minutes / 60 + "" + NO_BREAK_SPACE + "h";
        return minutes % 60 == 0 ? hours : hours + " " + rest;
    }

    static String hours(double seconds) {
        return fixed(seconds / 3600, 2);
    }

    /** At most so many decimals, without trailing zeros. */
    static String trimmed(double value, int decimals) {
        String text = fixed(value, decimals);
        int end = text.length();
        while (text.contains(".") && text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /** So many things, in the right number: {@code 1 night}, {@code 3 nights}. */
    static String count(long number, String one, String many) {
        return number + "" + NO_BREAK_SPACE + (number == 1 ? one : many);
    }

    private static int decimals(Quantity quantity) {
        int usual = usualDecimals(quantity.unit(), quantity.value());
        double error = quantity.standardError().orElse(0);
        if (error > 0 && error < 0.5 * Math.pow(10, -usual)) {
            return usual + 1;
        }
        return error > 1 ? Math.min(usual, error < 10 ? 1 : 0) : usual;
    }

    private static int usualDecimals(Unit unit, double value) {
        return switch (unit) {
            case COUNT -> 0;
            case SECOND, CELSIUS, PERCENT, ADU -> 1;
            case MILLIMETRE, METRE -> value == Math.rint(value) ? 0 : 1;
            case ARCSECOND_PER_PIXEL, ELECTRON_PER_ADU, DEGREE -> 3;
            case NONE -> Math.abs(value) < 1 ? 3 : 2;
            default -> 2;
        };
    }
}
