package noctuary.review;

import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import noctuary.keep.Drawer;
import noctuary.keep.Memo;
import noctuary.keep.Packing;
import noctuary.stats.ShiftTest;

/**
 * What relabelling says of one measure's nights: it takes longest in a review and follows from the nights' values alone,
 * so that a night with another value in one measure leaves what was found of the others.
 *
 * @param test absent without nights to compare
 * @param adjusted with the conditions that the measure follows first, as many as the nights afford
 */
record Tested(Optional<ShiftTest> test, Optional<Adjustment> adjusted) {
    static final Tested NOTHING = new Tested(Optional.empty(), Optional.empty());

    private static final Packing<Tested> PACKING = Packing.of(Tested.class);

    /** Finds what was worked out before. */
    interface Before {
        /** Everything is worked out now. */
        Before NOTHING = (nights, work) -> work.get();

        Tested of(MeasureNights nights, Supplier<Tested> work);
    }

    /** @param change id of what the nights lie around */
    static Before kept(Memo memo, String change, Set<Influence> changed) {
        Drawer<Tested> drawer = memo.drawer("tests", PACKING);
        return (nights, work) -> drawer.recall(change + "-" + nights.measure().id(), Judged.key(changed, nights), work);
    }
}
