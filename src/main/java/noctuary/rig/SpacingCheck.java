package noctuary.rig;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The corrector's distance to the sensor against the distance wanted. */
final class SpacingCheck {
    /** Beyond this the corners show it, mm; common practice, no source. */
    private static final double WRONG_MM = 1;
    /** What rounding of sums may leave, mm. */
    private static final double ROUNDING_MM = 1e-9;

    private SpacingCheck() {}

    static Optional<Check> of(Spacing spacing) {
        if (spacing.statedMm().isEmpty() || spacing.rows().isEmpty()) {
            return Optional.empty();
        }
        if (spacing.actualMm().isEmpty()) {
            return Optional.of(new Check("back-focus", Check.Level.WARN, unknown(spacing)));
        }
        double residual = spacing.residualMm().orElseThrow();
        return Optional.of(new Check("back-focus", level(residual), sentence(spacing, residual)));
    }

    private static Check.Level level(double residual) {
        double off = Math.abs(residual) - ROUNDING_MM;
        if (off <= Spacing.TOLERANCE_MM) {
            return Check.Level.OK;
        }
        return off <= WRONG_MM ? Check.Level.WARN : Check.Level.WRONG;
    }

    private static String unknown(Spacing spacing) {
        List<String> missing = spacing.unmeasured();
        return missing.isEmpty()
                ? "The distance from corrector to sensor is not known: no part of the train has a length."
                : Words.say(
                        "The distance from corrector to sensor cannot be summed: write the length of %s.",
                        Words.list(missing));
    }

    private static String sentence(Spacing spacing, double residual) {
        return Words.say(
                "%s %s are there (%s), %s are wanted%s. %s",
                verdict(residual),
                Words.mm(spacing.actualMm().orElseThrow()),
                sum(spacing),
                Words.mm(spacing.requiredMm().orElseThrow()),
                glass(spacing),
                advice(residual));
    }

    private static String verdict(double residual) {
        if (Math.abs(residual) < 0.005) {
            return "The sensor is at the corrector's distance:";
        }
        return Words.say(
                "The sensor is %s too %s the corrector:",
                Words.mm(Math.abs(residual)), residual < 0 ? "close to" : "far from");
    }

    private static String sum(Spacing spacing) {
        return spacing.rows().stream()
                .filter(row -> row.countedMm().orElse(0) > 0)
                .map(row -> row.name() + " " + Words.mm(row.countedMm().orElseThrow()))
                .collect(Collectors.joining(" + "));
    }

    private static String glass(Spacing spacing) {
        return spacing.glassShiftMm() > 0
                ? Words.say(
                        " (%s as stated, plus %s because filter glass moves the focus back; glass taken as n = %s)",
                        Words.mm(spacing.statedMm().orElseThrow()),
                        Words.mm(spacing.glassShiftMm()),
                        Words.number(Spacing.FILTER_GLASS_INDEX, 4))
                : "";
    }

    private static String advice(double residual) {
        String tolerance = Words.say(
                "tolerance ± %s, common practice, no source: the maker's drawing overrides",
                Words.mm(Spacing.TOLERANCE_MM));
        if (level(residual) == Check.Level.OK) {
            return Words.say("That is within tolerance (%s).", tolerance);
        }
        String mend = residual < 0
                ? Words.say("Add a shim or a longer spacer: %s more", Words.mm(-residual))
                : Words.say("A shim cannot help; a spacer shorter by %s can", Words.mm(residual));
        return Words.say("%s (%s).", mend, tolerance);
    }
}
