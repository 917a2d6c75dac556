package noctuary.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes every frame, stack and picture of the demo journal, and the truth about them.
 *
 * <p>Arguments: the journal's entries folder (default {@code entries}), then slugs to make only those and leave the
 * truth file alone. From the project's folder:
 *
 * <pre>mvn -q test-compile exec:java -Dmain.class=noctuary.demo.DemoJournal -Dexec.classpathScope=test -Dexec.args=entries</pre>
 */
public final class DemoJournal {
    private static final Path TRUTH = Path.of("src/test/resources/noctuary/demo/truth.csv");

    private DemoJournal() {}

    public static void main(String[] args) throws IOException {
        Path entries = Path.of(args.length == 0 ? "entries" : args[0]);
        List<String> chosen = args.length < 2 ? List.of() : List.of(args).subList(1, args.length);
        List<String> lines = new ArrayList<>(List.of(
                "# What the simulator planted in the frames of the demo journal; written by noctuary.demo.DemoJournal.",
                "# FWHM and ellipticity are those of the profile before the pixel integrates it, in the middle and at 0.86",
                "# of the way to the last corner. Noise is that of the empty sky, in counts of the file.",
                Truth.HEAD));
        for (PlannedEntry entry : Plan.read()) {
            if (chosen.isEmpty() || chosen.contains(entry.slug())) {
                DemoNight.write(entry, entries.resolve(entry.slug())).forEach(truth -> lines.add(truth.line()));
            }
        }
        if (chosen.isEmpty()) {
            Files.writeString(TRUTH, String.join("\n", lines) + "\n");
        }
    }
}
