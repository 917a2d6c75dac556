package noctuary.review;

import java.util.Optional;
import java.util.function.Function;

/**
 * How a measure is read from a night, and which nights it can compare.
 *
 * @param likeness nights are compared only where this agrees on both sides; the same for all where all compare
 * @param alikeIn what {@code likeness} is, for a sentence, such as {@code filter}
 * @param shownUnlikeFrom nights on both sides from which nights alike in nothing are shown all the same, since the
 *     judgement then says so
 * @param ofLight whether it tells of light alone, whatever the spacing of the rig
 * @param unfit why the measure says nothing of the change at all
 */
record Gauge(
        Measure measure,
        Function<EntryNight, Reading> read,
        Function<EntryNight, Object> likeness,
        String alikeIn,
        int shownUnlikeFrom,
        boolean ofLight,
        Function<Change, Optional<String>> unfit) {

    static Gauge of(Measure measure, Function<EntryNight, Reading> read) {
        return new Gauge(measure, read, n -> "", "", 0, false, change -> Optional.empty());
    }

    Gauge amongAlike(String what, Function<EntryNight, Object> key) {
        return new Gauge(measure, read, key, what, Integer.MAX_VALUE, ofLight, unfit);
    }

    /** Two nights on each side are what the judgement needs to call them confounded by the filter. */
    Gauge amongFilters() {
        return new Gauge(measure, read, EntryNight::filter, "filter", 2, ofLight, unfit);
    }

    Gauge unless(Function<Change, Optional<String>> reason) {
        return new Gauge(measure, read, likeness, alikeIn, shownUnlikeFrom, ofLight, reason);
    }

    Gauge ofLightAlone() {
        return new Gauge(measure, read, likeness, alikeIn, shownUnlikeFrom, true, unfit);
    }
}
