package noctuary.review;

import java.util.List;
import java.util.Set;
import noctuary.entry.RigNote;
import noctuary.fact.Printed;
import noctuary.measure.RigSheet;

/** Parts of a rig as a sentence names them. */
public final class Parts {
    private static final Set<String> DISTANCES = Set.of("spacer", "adapter", "ring");

    private Parts() {}

    /** Parts that came into the train on the date the state begins. */
    public static List<RigNote.Part> fresh(RigSheet.State state) {
        return state.train().stream()
                .filter(part -> part.since().filter(state.from()::equals).isPresent())
                .toList();
    }

    /** Name and length, such as {@code spacer 17.7 mm}. */
    public static String named(RigNote.Part part) {
        return part.name() + part.length().map(l -> " " + Printed.of(l.value())).orElse("");
    }

    /** The train of a night without what only sets a distance: the rest decides how much light arrives. */
    static List<RigNote.Part> ofLight(EntryNight night) {
        return night.state().map(RigSheet.State::train).orElse(List.of()).stream()
                .filter(part -> DISTANCES.stream().noneMatch(part.name()::contains))
                .toList();
    }
}
