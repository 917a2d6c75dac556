package noctuary.advice;

import static noctuary.advice.Words.arcsec;
import static noctuary.advice.Words.say;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The star width of an entry as squares of what makes it up. */
final class SharpnessBudget {
    static final String REST = "seeing";

    private final Sharpness s;

    private SharpnessBudget(Sharpness s) {
        this.s = s;
    }

    static Budget of(Sharpness sharpness) {
        return new SharpnessBudget(sharpness).budget();
    }

    /** What the known terms leave, brought to airmass 1; absent where that cannot be. */
    static OptionalDouble seeingAtZenith(Sharpness s) {
        OptionalDouble rest = of(s).term(REST).orElseThrow().amount();
        return rest.isPresent() && s.airmass().isPresent()
                ? OptionalDouble.of(rest.getAsDouble() / Math.pow(s.airmass().getAsDouble(), Drift.SEEING_POWER))
                : OptionalDouble.empty();
    }

    private Budget budget() {
        double shown = s.shownArcsec();
        List<Term> terms = new ArrayList<>(List.of(diffraction(), pixel(), guiding(), drift(), corners()));
        List<String> unknown = terms.stream()
                .filter(t -> t.amount().isEmpty())
                .map(Term::label)
                .toList();
        OptionalDouble rest = Budget.remainder(shown, terms);
        String with = unknown.isEmpty() ? "" : ", and with it what is not known: " + Words.list(unknown);
        terms.add(
                rest.isPresent()
                        ? Term.known(
                                REST, "seeing and the rest", rest.getAsDouble(), "what the other terms leave" + with)
                        : Term.unknown(
                                REST, "seeing and the rest", "the other terms are larger than the width measured"));
        return Budget.largestFirst("arcsec", shown, terms);
    }

    private Term diffraction() {
        return s.airyArcsec().isPresent()
                ? Term.known("diffraction", "diffraction", s.airyArcsec().getAsDouble(), "1.029 λ / D at 550 nm")
                : Term.unknown("diffraction", "diffraction", "the rig’s note does not tell the aperture");
    }

    private Term pixel() {
        return s.pixelArcsec().isPresent()
                ? Term.known("pixel", "pixel", s.pixelArcsec().getAsDouble(), "0.680 of the image scale")
                : Term.unknown("pixel", "pixel", "the image scale is not known");
    }

    private Term guiding() {
        OptionalDouble tracking = s.tracking();
        if (tracking.isEmpty()) {
            return Term.unknown("guiding", "guiding", "the note has no guiding line and too few stars tell");
        }
        boolean typed = s.guidingRmsArcsec().isPresent();
        boolean fromStars = s.trailArcsec().isPresent()
                && tracking.getAsDouble() == s.trailArcsec().getAsDouble();
        String how = fromStars
                ? "as far as all stars are drawn out one way" + (typed ? ", more than the RMS typed explains" : "")
                : say("1.665 × the RMS typed, %s", arcsec(s.guidingRmsArcsec().orElseThrow()));
        return Term.known("guiding", "guiding", tracking.getAsDouble(), how);
    }

    private Term drift() {
        if (!s.driftJudged()) {
            return Term.unknown("focus-drift", "focus drift over the night", "fewer than four frames of one night");
        }
        double fraction = s.drift()
                .map(d -> Math.sqrt(Math.max(0, 1 - 1 / (d.middleOverStart() * d.middleOverStart()))))
                .orElse(0.0);
        return Term.known(
                "focus-drift",
                "focus drift over the night",
                fraction * s.fwhmArcsec(),
                s.drift().isPresent() ? "from the night’s course, half way" : "no steady growth in the night’s course");
    }

    private Term corners() {
        if (s.corners().isEmpty() || s.arcsecPerPx().isEmpty()) {
            return Term.unknown("corners", "field away from the middle", "too few stars to map the field");
        }
        double centre = s.corners().get().centrePx() * s.arcsecPerPx().getAsDouble();
        double excess = Math.sqrt(Math.max(0, s.fwhmArcsec() * s.fwhmArcsec() - centre * centre));
        return Term.known(
                "corners", "field away from the middle", excess, "median star against the middle of the field");
    }
}
