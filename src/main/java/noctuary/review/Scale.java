package noctuary.review;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** On what the values are compared. */
enum Scale {
    /** Differences. */
    PLAIN,
    /** Shares. */
    LOG;

    /** Logarithms for a ratio, unless one of the nights is not positive. */
    static Scale of(MeasureNights nights) {
        boolean positive =
                Stream.of(nights.before(), nights.after()).flatMap(List::stream).allMatch(n -> n.value() > 0);
        return nights.measure().ratio() && positive ? LOG : PLAIN;
    }

    double of(double value) {
        return this == LOG ? Math.log(value) : value;
    }

    double back(double scaled) {
        return this == LOG ? Math.exp(scaled) : scaled;
    }

    /**
     * A shift found on this scale, said in the measure's unit.
     *
     * @param before the middle night before, in the unit
     */
    Shift shift(double value, double low, double high, double coverage, double p, double before) {
        if (this == LOG) {
            return new Shift(
                    before * Math.expm1(value),
                    before * Math.expm1(low),
                    before * Math.expm1(high),
                    coverage,
                    p,
                    OptionalDouble.of(Math.expm1(value)),
                    OptionalDouble.of(Math.expm1(low)),
                    OptionalDouble.of(Math.expm1(high)));
        }
        return new Shift(value, low, high, coverage, p, over(value, before), over(low, before), over(high, before));
    }

    /** How far a share of the middle night before is on this scale. */
    double step(double share, double before) {
        return this == LOG ? Math.abs(Math.log1p(-share)) : share * Math.abs(before);
    }

    /** The other way round: what share of the middle night before a fall by {@code step} is. */
    double share(double step, double before) {
        return this == LOG ? -Math.expm1(-step) : step / before;
    }

    private static OptionalDouble over(double value, double before) {
        return before > 0 && Double.isFinite(value) ? OptionalDouble.of(value / before) : OptionalDouble.empty();
    }
}
