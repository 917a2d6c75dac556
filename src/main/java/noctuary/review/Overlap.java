package noctuary.review;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Whether the two sides were taken under skies that can be compared: common support, as it is called where treatments are
 * compared without drawing lots (Dehejia &amp; Wahba 1999, JASA 94, 1053). The sides lie apart when every night of one is
 * beyond every night of the other by more than a difference that does not matter.
 */
final class Overlap {
    /** ln X by which FWHM changes by 3 % (X to the 0.6): 0.05. */
    private static final double LN_AIRMASS = 0.05;

    /** Magnitudes of moonlight that change the background by a tenth. */
    private static final double MOON_MAGNITUDES = 0.1;

    /** Half a season; common practice, no source. */
    private static final double SEASON_DAYS = 45;

    private static final double YEAR_DAYS = 365.25;

    private Overlap() {}

    /** Those of the measure's influences that can be measured and lie apart. */
    static List<Influence> against(Measure measure, List<Unit> units) {
        List<Influence> against = new ArrayList<>();
        for (Influence influence : List.of(Influence.AIRMASS, Influence.MOON)) {
            if (measure.feels(influence) && apart(units, influence)) {
                against.add(influence);
            }
        }
        if (measure.feels(Influence.SEASON) && seasonsApart(units)) {
            against.add(Influence.SEASON);
        }
        return against;
    }

    /** Airmass as its logarithm, moonlight in magnitudes. */
    static OptionalDouble value(NightValue night, Influence influence) {
        return switch (influence) {
            case AIRMASS ->
                night.airmass().isPresent()
                        ? OptionalDouble.of(Math.log(night.airmass().getAsDouble()))
                        : OptionalDouble.empty();
            case MOON -> night.moonMagnitudes();
            case SEASON, TARGET, SITE, RIG, FILTER, STEPS ->
                throw new IllegalArgumentException(influence + " is no number");
        };
    }

    static boolean known(List<Unit> units, Influence influence) {
        return units.stream().allMatch(u -> value(u.night(), influence).isPresent());
    }

    /** Whether it varied by more than does not matter. */
    static boolean varies(List<Unit> units, Influence influence) {
        Function<Unit, Double> value = u -> value(u.night(), influence).getAsDouble();
        double low = units.stream().mapToDouble(value::apply).min().orElse(0);
        double high = units.stream().mapToDouble(value::apply).max().orElse(0);
        return high - low > step(influence);
    }

    private static double step(Influence influence) {
        return influence == Influence.AIRMASS ? LN_AIRMASS : MOON_MAGNITUDES;
    }

    private static boolean apart(List<Unit> units, Influence influence) {
        if (!known(units, influence)) {
            return false;
        }
        double gap = Math.max(
                end(units, influence, true, false) - end(units, influence, false, true),
                end(units, influence, false, false) - end(units, influence, true, true));
        return gap > step(influence);
    }

    private static double end(List<Unit> units, Influence influence, boolean after, boolean high) {
        double sign = high ? 1 : -1;
        return sign
                * units.stream()
                        .filter(u -> u.after() == after)
                        .mapToDouble(u -> sign * value(u.night(), influence).getAsDouble())
                        .max()
                        .orElse(Double.NaN);
    }

    private static boolean seasonsApart(List<Unit> units) {
        return units.stream()
                .filter(u -> !u.after())
                .allMatch(b ->
                        units.stream().filter(Unit::after).allMatch(a -> days(a.night(), b.night()) > SEASON_DAYS));
    }

    /** Between two nights round the year, whichever the year. */
    private static double days(NightValue a, NightValue b) {
        double apart = Math.abs(a.night().getDayOfYear() - b.night().getDayOfYear());
        return Math.min(apart, YEAR_DAYS - apart);
    }
}
