package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import noctuary.entry.RigNote.Part;
import org.junit.jupiter.api.Test;

class RigNoteTest {
    private static final LocalDate MAY = LocalDate.of(2025, 5, 20);
    private static final LocalDate AUGUST = LocalDate.of(2025, 8, 2);
    private static final LocalDate OCTOBER = LocalDate.of(2025, 10, 1);

    private final RigNote rig = rig("""
            ---
            name: Heron
            train:
              - {part: corrector}
              - {part: spacer, length: 55.0 mm}
              - {part: spacer, since: 2025-10-01, length: 56.4 mm}
              - {part: spacer, since: 2025-08-02, length: 56.2 mm}
              - {part: tilt ring, since: 2025-08-02, length: 1 mm}
              - {part: camera, length: 17.5 mm}
            payload: [{part: tube, mass: 6 kg}, {part: guider, since: 2025-05-20, mass: 300 g}]
            ---
            """);

    private static RigNote rig(String text) {
        var margin = new Margin("entries/rigs/heron.md", new Ledger());
        Note note = Note.of(new NoteText(text, false), margin);
        return RigReader.read("heron", note, new NoteHtml.Page("", List.of()), margin);
    }

    private static List<String> shown(List<Part> parts) {
        return parts.stream()
                .map(part -> part.name()
                        + part.length()
                                .map(length -> " " + length.value().value())
                                .orElse(""))
                .toList();
    }

    @Test
    void aDatedPartTakesItsNamesakesPlaceFromItsDateOn() {
        assertThat(shown(rig.trainOn(MAY))).containsExactly("corrector", "spacer 55.0", "camera 17.5");
        assertThat(shown(rig.trainOn(AUGUST.minusDays(1)))).contains("spacer 55.0");
        assertThat(shown(rig.trainOn(AUGUST)))
                .containsExactly("corrector", "spacer 56.2", "tilt ring 1.0", "camera 17.5");
        assertThat(shown(rig.trainOn(OCTOBER.plusYears(1))))
                .containsExactly("corrector", "spacer 56.4", "tilt ring 1.0", "camera 17.5");
    }

    @Test
    void payloadChangesToo() {
        assertThat(shown(rig.payloadOn(MAY.minusDays(1)))).containsExactly("tube");
        assertThat(shown(rig.payloadOn(MAY))).containsExactly("tube", "guider");
    }

    @Test
    void everyChangeIsListedOnceInOrder() {
        assertThat(rig.partChanges()).containsExactly(MAY, AUGUST, OCTOBER);
    }
}
