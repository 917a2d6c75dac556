package noctuary.review;

import java.util.List;
import java.util.Set;
import noctuary.keep.Memo;
import noctuary.keep.Packing;

/** Verdicts as they are kept: they follow from what changed and from the nights' values alone. */
record Judged(List<MeasureReview> measures) {
    private static final Packing<Judged> PACKING = Packing.of(Judged.class);

    private record Asked(List<Influence> changed, List<MeasureNights> measures) {
        static final Packing<Asked> PACKING = Packing.of(Asked.class);
    }

    /** As {@link Judgement#of}, from {@code memo} where it was asked before. */
    static List<MeasureReview> of(Set<Influence> changed, List<MeasureNights> measures, Memo memo) {
        String key = Asked.PACKING.digest(new Asked(changed.stream().sorted().toList(), measures));
        return memo.recall("verdicts", PACKING, key, () -> new Judged(Judgement.of(changed, measures)))
                .measures();
    }
}
