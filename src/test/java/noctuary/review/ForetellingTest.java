package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From 80 mm f/4.8 with 3.75 µm to 150 mm f/4.75 with 4.6 µm; numbers by hand from HANDBOOK 2's formulas. */
class ForetellingTest {
    @TempDir
    private Path folder;

    private PlantedJournal journal;

    @BeforeEach
    void begin() {
        journal = new PlantedJournal(folder)
                .night("2025-01-10", "wren", "terrace", "M 42", 0.8)
                .night("2025-05-24", "heron", "terrace", "M 51", 0.6);
    }

    private Map<String, Foretold> foretold() {
        List<Foretold> rows =
                journal.reviews().around("rig-heron").orElseThrow().foretold();
        return rows.stream().collect(Collectors.toMap(Foretold::label, Function.identity()));
    }

    @Test
    void arithmeticFromRigToRig() {
        Map<String, Foretold> rows = foretold();
        assertThat(rows.get("Image scale").before().getAsDouble()).isCloseTo(206.264806 * 3.75 / 384, within(1e-6));
        assertThat(rows.get("Image scale").foretold().getAsDouble())
                .isCloseTo((4.6 / 712.5) / (3.75 / 384), within(1e-9));
        assertThat(rows.get("Diffraction limit").foretold().getAsDouble()).isCloseTo(80 / 150.0, within(1e-9));
        assertThat(rows.get("Light a square arcsec").foretold().getAsDouble())
                .isCloseTo(150 * 150 / 6400.0, within(1e-9));
        assertThat(rows.get("Light a pixel").foretold().getAsDouble())
                .as("square of (pixel / focal ratio)")
                .isCloseTo(Math.pow((4.6 / 4.75) / (3.75 / 4.8), 2), within(1e-9));
        assertThat(rows.get("Image scale").shown())
                .as("no image on either side")
                .isEmpty();
    }

    @Test
    void whatARigDoesNotTellIsNotForetold() {
        journal.file("rigs/heron.md", "---", "name: Heron", "in use: 2025-05-20 on", "---");
        Foretold scale = foretold().get("Image scale");
        assertThat(scale.foretold()).isEmpty();
        assertThat(scale.remark()).isEqualTo("the rigs do not tell enough for it");
    }
}
