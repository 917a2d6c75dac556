package noctuary.review;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says a verdict to a tired reader: what, how much, over how many nights. */
final class Sentence {
    private final Measure measure;
    private final Optional<Shift> shift;
    private final Grounds grounds;

    private Sentence(Measure measure, Optional<Shift> shift, Grounds grounds) {
        this.measure = measure;
        this.shift = shift;
        this.grounds = grounds;
    }

    static String of(Measure measure, Verdict verdict, Optional<Shift> shift, Grounds grounds) {
        Sentence sentence = new Sentence(measure, shift, grounds);
        return switch (verdict) {
            case BETTER, WORSE -> sentence.changed();
            case NO_DIFFERENCE -> sentence.same();
            case TOO_FEW -> sentence.tooFew();
            case CONFOUNDED -> sentence.confounded();
        };
    }

    private String changed() {
        Shift s = shift.orElseThrow();
        double low = Math.min(Math.abs(s.low()), Math.abs(s.high()));
        double high = Math.max(Math.abs(s.low()), Math.abs(s.high()));
        String way = s.value() < 0 ? " fell by " : " rose by ";
        return measure.label() + way + amount(s.value()) + share(s.value()) + " over " + nights() + taken()
                + "; likely between " + number(low) + " and " + amount(high) + ".";
    }

    private String same() {
        Shift s = shift.orElseThrow();
        if (s.low() * s.high() > 0) {
            String way = s.value() < 0 ? " fell by " : " rose by ";
            return measure.label() + way + amount(s.value()) + share(s.value()) + " over " + nights() + taken()
                    + ", but one of so many measures may do that by chance.";
        }
        return "No difference seen over " + nights() + taken() + "; " + measure.label()
                + " may still have fallen by up to " + amount(Math.max(0, -s.low())) + " or risen by up to "
                + amount(Math.max(0, s.high())) + ".";
    }

    private String tooFew() {
        if (grounds.nightsBefore() == 0 || grounds.nightsAfter() == 0) {
            return "No " + unit(1) + " " + (grounds.nightsBefore() == 0 ? before() : after()) + " to compare with.";
        }
        Wanted wanted = grounds.wanted().orElseThrow();
        String would = wanted.share() > 0
                ? " would most likely show a change of " + percent(wanted.share()) + "."
                : " are the fewest that could tell.";
        return "Too few to tell a change from chance: " + nights() + "; " + more(wanted) + would;
    }

    private String more(Wanted wanted) {
        if (wanted.before() == wanted.after()) {
            return wanted.after() + " more on each side";
        }
        if (wanted.before() == 0) {
            return wanted.after() + " more " + after();
        }
        return wanted.after() == 0
                ? wanted.before() + " more " + before()
                : wanted.before() + " more " + before() + " and " + wanted.after() + " more " + after();
    }

    private String confounded() {
        return "Cannot be put down to this change: " + nights() + " do not overlap in "
                + list(grounds.against(), " or ") + ".";
    }

    private String nights() {
        return grounds.nightsBefore() + " " + unit(grounds.nightsBefore()) + " " + before() + " and "
                + grounds.nightsAfter() + " " + after();
    }

    private boolean ofPictures() {
        return measure.follows(Influence.STEPS);
    }

    private String unit(int count) {
        return ofPictures() ? count == 1 ? "entry" : "entries" : count == 1 ? "night" : "nights";
    }

    private String before() {
        return ofPictures() ? "without" : "before";
    }

    private String after() {
        return ofPictures() ? "with" : "after";
    }

    private String taken() {
        List<Influence> unknown =
                grounds.unknown().stream().filter(measure::follows).toList();
        return (grounds.decides() ? " at equal " + list(grounds.adjustedFor(), " and ") : "")
                + (unknown.isEmpty() ? "" : ", " + list(unknown, " and ") + " not known");
    }

    private static String list(List<Influence> influences, String last) {
        List<String> words = influences.stream().map(Influence::word).toList();
        int n = words.size();
        return n < 2
                ? String.join("", words)
                : words.stream().limit(n - 1).collect(Collectors.joining(", ")) + last + words.get(n - 1);
    }

    private String share(double value) {
        return shift.orElseThrow().share().isPresent()
                ? " (" + percent(Math.abs(shift.orElseThrow().share().getAsDouble())) + ")"
                : "";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private String amount(double value) {
        return number(Math.abs(value)) + (measure.unit().isEmpty() ? "" : " " + measure.unit());
    }

    /** To two digits of the interval's half-width. */
    private String number(double value) {
        Shift s = shift.orElseThrow();
        double reach = s.bounded() ? (s.high() - s.low()) / 2 : Math.abs(s.value());
        int decimals = reach > 0 ? (int) Math.max(0, Math.min(6, 1 - Math.floor(Math.log10(reach)))) : 2;
        return String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
    }
}
