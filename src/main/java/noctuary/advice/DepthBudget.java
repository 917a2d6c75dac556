package noctuary.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The noise of one pixel of one exposure as squares of what makes it up. */
final class DepthBudget {
    private DepthBudget() {}

    /** Absent where the noise is not known in electrons. */
    static Optional<Budget> of(Depth d) {
        if (d.noiseE().isEmpty()) {
            return Optional.empty();
        }
        double total = d.noiseE().getAsDouble();
        List<Term> terms = new ArrayList<>(List.of(
                term(
                        "read-noise",
                        "read noise",
                        d.readNoiseE(),
                        "the rig or the header tells it",
                        "neither rig nor header tells it"),
                term(
                        "dark",
                        "dark current",
                        root(d.darkE()),
                        "from the dark frames of the entry",
                        "the entry has no dark frames of this exposure"),
                term(
                        "residue",
                        "calibration residue in rows and columns",
                        d.bandingE(),
                        "rows and columns in excess of chance",
                        "not measured")));
        OptionalDouble rest = Budget.remainder(total, terms);
        terms.add(
                rest.isPresent() && d.readNoiseE().isPresent()
                        ? Term.known("sky", "sky, and whatever glows before it", rest.getAsDouble(), with(d))
                        : Term.unknown(
                                "sky", "sky, and whatever glows before it", "cannot be told from the read noise"));
        return Optional.of(Budget.largestFirst("e", total, terms));
    }

    private static String with(Depth d) {
        return "what the other terms leave" + (d.darkE().isEmpty() ? "; with it the dark current" : "");
    }

    private static Term term(String id, String label, OptionalDouble amount, String how, String why) {
        return new Term(id, label, amount, amount.isPresent() ? how : why);
    }

    private static OptionalDouble root(OptionalDouble squared) {
        return squared.isPresent() ? OptionalDouble.of(Math.sqrt(squared.getAsDouble())) : squared;
    }
}
