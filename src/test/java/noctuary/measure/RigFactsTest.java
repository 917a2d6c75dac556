package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import noctuary.entry.Journal;
import noctuary.fact.Fact;
import noctuary.fact.Origin.Derived;
import noctuary.fact.Origin.Input;
import noctuary.fact.Quantity;
import noctuary.measure.RigSheet.NamedFact;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RigFactsTest {
    @TempDir
    private Path folder;

    private RigSheet rig(String... lines) {
        SmallJournal journal = new SmallJournal(folder);
        journal.file("rigs/heron.md", ("---\nname: Heron\n" + String.join("\n", lines) + "\n---").split("\n"));
        return RigSheets.of(Journal.read(folder), List.of()).get("heron");
    }

    private static Fact<Quantity> fact(RigSheet.State state, String id) {
        return state.facts().stream()
                .filter(f -> f.id().equals(id))
                .map(NamedFact::fact)
                .findFirst()
                .orElseThrow();
    }

    /** Worked out: 6.1 + 0.7 kg, then 6.1 + 0.9 kg. */
    @Test
    void aReplacedPartOfThePayloadWeighsNoMore() {
        RigSheet heron = rig("payload: [{part: tube, mass: 6.1 kg}, {part: camera, mass: 0.7 kg},"
                + " {part: camera, since: 2025-08-02, mass: 0.9 kg}]");
        assertThat(heron.states()).hasSize(2);
        assertThat(heron.states().get(0).figures().payloadKg().orElseThrow()).isCloseTo(6.8, within(1e-9));
        assertThat(heron.latest().figures().payloadKg().orElseThrow()).isCloseTo(7.0, within(1e-9));
        Fact.Known<Quantity> load = (Fact.Known<Quantity>) fact(heron.latest(), "payloadKg");
        Derived origin = (Derived) load.reading().origin();
        assertThat(origin.inputs()).extracting(Input::value).containsExactly("6.1 kg", "0.9 kg");
    }

    @Test
    void whatIsMissingIsNamed() {
        RigSheet heron = rig(
                "optics: {aperture: 150 mm}",
                "train: [{part: spacer, length: 16.5 mm}, {part: camera, front: M42x0.75 female}]");
        assertThat(fact(heron.latest(), "focalRatio"))
                .isEqualTo(Fact.missing("the rig's note does not give the focal length"));
        assertThat(fact(heron.latest(), "backFocusActualMm"))
                .isEqualTo(Fact.missing("the rig's note does not give the length of camera"));
        assertThat(fact(heron.latest(), "payloadKg"))
                .isEqualTo(Fact.missing("the rig's note does not give the payload"));
    }
}
