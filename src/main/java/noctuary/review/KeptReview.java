package noctuary.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import noctuary.keep.Digest;
import noctuary.keep.Memo;
import noctuary.keep.Packing;

/**
 * What a review works out from its nights alone.
 *
 * @param verdicts under which the measures are kept
 */
record KeptReview(
        String verdicts,
        List<MeasureReview> measures,
        List<AbsentMeasure> absent,
        List<Circumstance> circumstances,
        List<Loss> losses,
        List<Foretold> foretold,
        Optional<FairTest> test) {
    private static final String KIND = "reviews";

    /** All but the measures, which lie with the verdicts. */
    private record Rest(
            String verdicts,
            List<AbsentMeasure> absent,
            List<Circumstance> circumstances,
            List<Loss> losses,
            List<Foretold> foretold,
            Optional<FairTest> test) {
        static final Packing<Rest> PACKING = Packing.of(Rest.class);
    }

    /** All that a review of such a change follows from; empty when a night's files have no identity. */
    static String key(Change change) {
        Digest digest = new Digest()
                .text(change.id())
                .text(change.kind().id())
                .text(change.sentence())
                .text(change.part().orElse(""))
                .text(change.words().toString());
        boolean known = true;
        for (Side side : List.of(change.before(), change.after())) {
            digest.text(side.id()).text(side.name());
            for (EntryNight night : Stream.concat(side.nights().stream(), side.alikeInLight().stream())
                    .toList()) {
                known &= !night.sheet().key().isEmpty();
                digest.text(night.sheet().key()).text(night.night().toString());
            }
            digest.text("end");
        }
        return known ? digest.hex() : "";
    }

    static Optional<KeptReview> find(String key, Memo memo) {
        return memo.find(KIND, Rest.PACKING, key)
                .flatMap(rest -> Judged.find(rest.verdicts(), memo)
                        .map(measures -> new KeptReview(
                                rest.verdicts(),
                                measures,
                                rest.absent(),
                                rest.circumstances(),
                                rest.losses(),
                                rest.foretold(),
                                rest.test())));
    }

    void keep(String key, Memo memo) {
        memo.keep(KIND, Rest.PACKING, key, new Rest(verdicts, absent, circumstances, losses, foretold, test));
    }
}
