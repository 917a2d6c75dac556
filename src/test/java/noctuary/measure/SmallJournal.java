package noctuary.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import noctuary.entry.Journal;
import noctuary.fact.Problem;

/** A journal on disk with one rig and one site, to which a test adds entries and frames. */
public final class SmallJournal {
    private final Path root;

    public SmallJournal(Path root) {
        this.root = root;
        file("journal.yaml", "title: Nights above Averil", "site: terrace", "rig: heron");
        file(
                "rigs/heron.md",
                "---",
                "name: Heron",
                "optics: {aperture: 150 mm, focal length: 750 mm, reducer: 0.95, back focus: 55 mm}",
                "camera: {pixel: 3.3 µm, width: 200, height: 150, gain: 0.3 e/ADU}",
                "---");
        file(
                "sites/terrace.md",
                "---",
                "name: Terrace",
                "latitude: 44.3 deg",
                "longitude: 9.2 deg",
                "time zone: Europe/Rome",
                "---");
    }

    public Path root() {
        return root;
    }

    /** Writes a file below entries/. */
    public Path file(String name, String... lines) {
        try {
            Path file = root.resolve("entries").resolve(name);
            Files.createDirectories(file.getParent());
            return Files.write(file, List.of(lines));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes entries/SLUG/entry.md with these lines of front matter. */
    public SmallJournal entry(String slug, String... frontMatter) {
        String text = "---\n" + String.join("\n", frontMatter) + "\n---\nA note.\n";
        file(slug + "/entry.md", text.split("\n"));
        return this;
    }

    /** Writes frames of a minute each beside the entry, a minute apart. */
    public SmallJournal frames(String slug, int count, long seed, String night) {
        for (int f = 0; f < count; f++) {
            frame(
                    slug,
                    "f" + f + ".fits",
                    FrameDraft.stars(3, seed)
                            .card("EXPTIME", "60.0")
                            .card("DATE-OBS", "'" + night + "T22:3" + f + ":00'"));
        }
        return this;
    }

    /** Writes a frame beside the entry. */
    public SmallJournal frame(String slug, String name, FrameDraft frame) {
        frame.write(root.resolve("entries").resolve(slug).resolve(name));
        return this;
    }

    public EntrySheet sheet(String slug) {
        Journal journal = Journal.read(root);
        if (journal.problems().stream().anyMatch(Problem::isFault)) {
            throw new AssertionError(journal.problems());
        }
        return new EntrySheets(journal, Meter::measure)
                .of(journal.entries().stream()
                        .filter(e -> e.slug().equals(slug))
                        .findFirst()
                        .orElseThrow());
    }
}
