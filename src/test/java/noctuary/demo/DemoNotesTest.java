package noctuary.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the keeper wrote agrees with what happened, where they could know it. */
class DemoNotesTest {
    private static final Path ENTRIES = Path.of("entries");
    private static final Pattern GUIDING = Pattern.compile("guiding: \\{rms: ([\\d.]+) arcsec\\}");

    @Test
    void notesNameTargetRigSiteAndGuidingOfThePlan() throws IOException {
        for (PlannedEntry entry : Plan.read()) {
            String note = note(entry.slug() + "/entry.md");
            assertThat(note)
                    .contains(
                            "\ntarget: " + entry.target() + "\n",
                            "\nrig: " + entry.rig() + "\n",
                            "\nsite: " + entry.site() + "\n");
            assertThat(note.contains("\nframes: [lights/*.fits.fz]\n")).isEqualTo(entry.keepsFrames());
            assertThat(note.contains("\nstack: stack.fits.fz\n")).isEqualTo(entry.keepsStack());
            Matcher guiding = GUIDING.matcher(note);
            assertThat(guiding.find()).isTrue();
            assertThat(Double.parseDouble(guiding.group(1))).isEqualTo(entry.guiding());
        }
    }

    @Test
    void versionsNameTheStepsTheirPicturesWereMadeBy() throws IOException {
        for (PlannedEntry entry : Plan.read()) {
            for (PlannedEntry.Picture picture : entry.pictures()) {
                String line = note(entry.slug() + "/entry.md")
                        .lines()
                        .filter(l -> l.contains("image: " + picture.file()))
                        .findFirst()
                        .orElseThrow();
                assertThat(steps(line, "stretch: asinh")).isEqualTo(picture.stretch());
                assertThat(steps(line, "black point:")).isEqualTo(picture.black());
                assertThat(steps(line, "noise reduction:")).isEqualTo(picture.smooth());
                assertThat(ENTRIES.resolve(entry.slug()).resolve(picture.file()))
                        .exists();
            }
        }
    }

    @Test
    void notesAreOfALengthThatOneReads() throws IOException {
        try (Stream<Path> all = Files.walk(ENTRIES, 2)) {
            List<Path> notes = all.filter(
                            file -> file.toString().matches(".*\\d{4}-\\d\\d-\\d\\d-[a-z0-9]+(/entry)?\\.md"))
                    .toList();
            assertThat(notes).hasSizeGreaterThanOrEqualTo(18);
            for (Path note : notes) {
                String body = Files.readString(note).split("\n---\n", 2)[1];
                assertThat(body.split("\\s+").length).as(note.toString()).isBetween(120, 350);
            }
        }
    }

    /**
     * Glass of thickness t and index n before the focus moves it back by t (n - 1) / n; 1.5168 is that of borosilicate
     * crown.
     */
    @Test
    void theSpacerMendsWhatTheGlassDid() throws IOException {
        double glass = 3.5 * 0.5168 / 1.5168;
        assertThat(note("rigs/heron.md"))
                .contains("length: 16.5 mm", "since: 2025-09-20, length: 17.7 mm", "glass: 2 mm", "glass: 1.5 mm");
        assertThat(55.0 - 55 - glass).isCloseTo(planned("2025-08-22-m27"), within(0.01));
        assertThat(16.5 + 21 + 17.5 + 1.2 - 55 - glass).isCloseTo(planned("2025-09-26-m27"), within(0.01));
        for (Map<String, String> row : TruthTable.read()) {
            double excess =
                    Double.parseDouble(row.get("corner_ellipticity")) - Double.parseDouble(row.get("ellipticity"));
            boolean tooShort = row.get("rig").equals("heron") && row.get("slug").compareTo("2025-09-20") < 0;
            if (tooShort) {
                assertThat(excess).as(row.get("slug")).isGreaterThan(0.08);
            } else {
                assertThat(Math.abs(excess)).as(row.get("slug")).isLessThan(0.02);
            }
        }
    }

    private static double planned(String slug) {
        return Plan.read().stream()
                .filter(entry -> entry.slug().equals(slug))
                .mapToDouble(entry -> DemoRig.of(entry.rig()).spacingErrorMm(entry.date()))
                .findFirst()
                .orElseThrow();
    }

    private static double steps(String line, String name) {
        Matcher number = Pattern.compile(Pattern.quote(name) + " ([\\d.]+)").matcher(line);
        assertThat(number.find()).as(line).isTrue();
        return Double.parseDouble(number.group(1));
    }

    private static String note(String name) throws IOException {
        return Files.readString(ENTRIES.resolve(name));
    }
}
