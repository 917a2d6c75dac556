package noctuary.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.entry.RigNote;
import noctuary.measure.RigSheet;
import noctuary.measure.RigSpecs;
import noctuary.rig.RigSpec;

/**
 * A rig as it was between two changes of its parts.
 *
 * @param until the day of the next change; absent for the rig as it is
 */
record Setup(RigSheet rig, LocalDate from, Optional<LocalDate> until, RigSpec spec) {
    /** Newest first. */
    static List<Setup> of(RigSheet rig) {
        List<RigSheet.State> states = rig.states();
        return IntStream.range(0, states.size())
                .map(i -> states.size() - 1 - i)
                .mapToObj(i -> new Setup(
                        rig,
                        states.get(i).from(),
                        i + 1 < states.size() ? Optional.of(states.get(i + 1).from()) : Optional.empty(),
                        RigSpecs.on(rig.note(), states.get(i).from())))
                .toList();
    }

    String id() {
        return rig.note().id();
    }

    List<RigNote.Price> prices() {
        return rig.note().cost();
    }

    /** Entries made with it just so. */
    List<EntryContext> entries(List<EntryContext> all) {
        return all.stream()
                .filter(e -> e.rigId().equals(id()))
                .filter(e -> e.rig().filter(state -> state.from().equals(from)).isPresent())
                .toList();
    }
}
