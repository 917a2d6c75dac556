package noctuary.measure;

import java.time.LocalDate;
import java.util.List;
import noctuary.entry.RigNote;
import noctuary.fact.Fact;
import noctuary.fact.Quantity;
import noctuary.rig.Check;
import noctuary.rig.RigFigures;

/**
 * All that is known about one rig.
 *
 * @param states the rig as it was from each date on: one for its first use, one for each date a part changed
 * @param slugs entries made with it, oldest night first
 */
public record RigSheet(RigNote note, List<State> states, List<String> slugs) {
    public RigSheet {
        states = List.copyOf(states);
        slugs = List.copyOf(slugs);
    }

    /** @param facts for the page, each with its formula and inputs */
    public record State(
            LocalDate from, List<RigNote.Part> train, RigFigures figures, List<NamedFact> facts, List<Check> checks) {
        public State {
            train = List.copyOf(train);
            facts = List.copyOf(facts);
            checks = List.copyOf(checks);
        }
    }

    public record NamedFact(String id, String label, Fact<Quantity> fact) {}

    /** The rig as it was last. */
    public State latest() {
        return states.get(states.size() - 1);
    }
}
