package noctuary.entry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.stream.Collectors;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;

/** Quantities as typed, with a unit, converted to the unit in which they are kept. */
final class TypedQuantity {
    private static final BigDecimal FREEZING_F = BigDecimal.valueOf(32);
    private static final BigDecimal FIVE_NINTHS =
            BigDecimal.valueOf(5).divide(BigDecimal.valueOf(9), MathContext.DECIMAL128);

    private TypedQuantity() {}

    static Form<Quantity> in(Unit kept) {
        return text -> Quantity.of(convert(TypedNumber.of(text), kept, text), kept);
    }

    static Form<Quantity> positive(Unit kept) {
        return atLeast(kept, Double.MIN_VALUE, "must be above zero");
    }

    static Form<Quantity> notNegative(Unit kept) {
        return atLeast(kept, 0, "must not be negative");
    }

    /** Between two limits in the kept unit, inclusive. */
    static Form<Quantity> between(Unit kept, double low, double high) {
        return text -> {
            Quantity quantity = in(kept).of(text);
            if (quantity.value() < low || quantity.value() > high) {
                throw new Unfit(
                        Margin.quoted(text) + " is outside what is possible",
                        "write a value from " + (long) low + " to " + (long) high + " " + kept.symbol());
            }
            return quantity;
        };
    }

    private static Form<Quantity> atLeast(Unit kept, double low, String rule) {
        return text -> {
            Quantity quantity = in(kept).of(text);
            if (quantity.value() < low) {
                throw new Unfit(Margin.quoted(text) + " " + rule, "check the number");
            }
            return quantity;
        };
    }

    /** A time in the kept unit, for keys whose name already tells it: bare, or with a unit of time. */
    static BigDecimal time(String text, TypedUnit kept) throws Unfit {
        TypedNumber number = TypedNumber.of(text);
        TypedUnit unit = number.unit().isEmpty() ? kept : unit(number, kept, text);
        BigDecimal value = number.value().multiply(unit.size()).divide(kept.size(), MathContext.DECIMAL128);
        if (value.signum() <= 0) {
            throw new Unfit(Margin.quoted(text) + " must be above zero", "check the number");
        }
        BigDecimal shortest = value.stripTrailingZeros();
        return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
    }

    private static double convert(TypedNumber number, Unit kept, String text) throws Unfit {
        TypedUnit goal = TypedUnit.of(kept);
        TypedUnit unit = unit(number, goal, text);
        if (unit == TypedUnit.FAHRENHEIT) {
            return number.value()
                    .subtract(FREEZING_F)
                    .multiply(FIVE_NINTHS, MathContext.DECIMAL64)
                    .doubleValue();
        }
        return number.value()
                .multiply(unit.size())
                .divide(goal.size(), MathContext.DECIMAL128)
                .doubleValue();
    }

    private static TypedUnit unit(TypedNumber number, TypedUnit goal, String text) throws Unfit {
        TypedUnit.Kind kind = goal.kind();
        String typed = number.unit();
        if (typed.isEmpty()) {
            throw new Unfit(kind.phrase() + " needs a unit, and " + Margin.quoted(text) + " has none", choices(goal));
        }
        Optional<TypedUnit> unit = TypedUnit.of(typed);
        if (unit.isPresent() && unit.get().kind() == kind) {
            return unit.get();
        }
        String what = unit.isPresent()
                ? Margin.quoted(text) + " is not " + kind.phrase()
                : "unknown unit " + Margin.quoted(typed);
        throw new Unfit(
                what,
                TypedUnit.meant(typed, kind)
                        .map(meant -> "did you mean " + Margin.quoted(meant.symbol()) + "?")
                        .orElseGet(() -> "known: " + symbols(kind)));
    }

    private static String choices(TypedUnit goal) {
        String others = TypedUnit.ofKind(goal.kind()).stream()
                .filter(unit -> unit != goal)
                .map(TypedUnit::symbol)
                .collect(Collectors.joining(", "));
        return "write it in " + goal.symbol() + (others.isEmpty() ? "" : ", or in one of: " + others);
    }

    private static String symbols(TypedUnit.Kind kind) {
        return TypedUnit.ofKind(kind).stream().map(TypedUnit::symbol).collect(Collectors.joining(", "));
    }
}
