package noctuary.review;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import noctuary.keep.Memo;
import noctuary.keep.Packing;

/** Verdicts as they are kept: they follow from what changed and from the nights' values alone. */
record Judged(List<MeasureReview> measures) {
    private static final Packing<Judged> PACKING = Packing.of(Judged.class);
    private static final String KIND = "verdicts";

    private record Asked(List<Influence> changed, List<MeasureNights> measures) {
        static final Packing<Asked> PACKING = Packing.of(Asked.class);
    }

    /** What the verdicts follow from, in one word. */
    static String key(Set<Influence> changed, List<MeasureNights> measures) {
        return Asked.PACKING.digest(new Asked(changed.stream().sorted().toList(), measures));
    }

    /** What follows from one measure's nights, whatever the others are. */
    static String key(Set<Influence> changed, MeasureNights nights) {
        return key(changed, List.of(nights));
    }

    /**
     * As {@link Judgement#of}, from {@code memo} where it was asked before.
     *
     * @param key as {@link #key} gives it for the same
     * @param change id of what the nights lie around
     */
    static List<MeasureReview> of(
            String key, String change, Set<Influence> changed, List<MeasureNights> measures, Memo memo) {
        Tested.Before before = Tested.kept(memo, change, changed);
        return memo.recall(KIND, PACKING, key, () -> new Judged(Judgement.of(changed, measures, before)))
                .measures();
    }

    static Optional<List<MeasureReview>> find(String key, Memo memo) {
        return memo.find(KIND, PACKING, key).map(Judged::measures);
    }
}
