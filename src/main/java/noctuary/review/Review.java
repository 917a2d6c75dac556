package noctuary.review;

import java.util.List;
import java.util.Optional;

/**
 * A change reviewed.
 *
 * @param key stands for all that it follows from; empty when that cannot be told
 * @param measures with a value on both sides, each with its verdict
 * @param absent the others, with the reason
 * @param leftOut entries that would belong to a side, but whose night, or that of some frames, nobody tells
 * @param coincidences what else was not the same, in sentences
 * @param foretold by arithmetic; empty unless whole rigs are compared
 * @param test for an open question
 */
public record Review(
        String key,
        Change change,
        List<MeasureReview> measures,
        List<AbsentMeasure> absent,
        List<String> leftOut,
        List<Circumstance> circumstances,
        List<Loss> losses,
        List<String> coincidences,
        List<DepthPair> pairs,
        List<Foretold> foretold,
        Optional<FairTest> test) {
    public Review {
        measures = List.copyOf(measures);
        absent = List.copyOf(absent);
        leftOut = List.copyOf(leftOut);
        circumstances = List.copyOf(circumstances);
        losses = List.copyOf(losses);
        coincidences = List.copyOf(coincidences);
        pairs = List.copyOf(pairs);
        foretold = List.copyOf(foretold);
    }

    /** The measure named beforehand as the one that decides. */
    public Optional<MeasureReview> primary() {
        return measures.stream().filter(m -> m.nights().primary()).findFirst();
    }

    /** What may be said of the whole; absent for a choice of which no picture tells. */
    public Optional<Verdict> verdict() {
        if (unmeasured()) {
            return Optional.empty();
        }
        return Optional.of(primary().map(MeasureReview::verdict).orElse(Verdict.TOO_FEW));
    }

    /** One sentence for the verdict. */
    public String why() {
        if (unmeasured()) {
            return "A choice alters a picture and not its frames, and there are no pictures with it and without it to measure.";
        }
        return primary().map(MeasureReview::why).orElseGet(this::whyNothing);
    }

    private boolean unmeasured() {
        return change.kind() == ChangeKind.CHOICE && measures.isEmpty();
    }

    private String whyNothing() {
        boolean before = change.before().nights().isEmpty();
        boolean after = change.after().nights().isEmpty();
        if (before || after) {
            return "There is no night " + (before && after ? "on either side" : before ? "before" : "after") + " yet.";
        }
        return "No measure that could decide is known on both sides.";
    }
}
