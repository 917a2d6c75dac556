package noctuary.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import noctuary.entry.Journal;

/** A journal of damaged notes, rigs, sites and settings, read as one. */
final class NoteSubject implements Subject {
    static final int ENTRIES = 24;

    private final List<byte[]> entries = new ArrayList<>();
    private final List<byte[]> rigs = new ArrayList<>();
    private final List<byte[]> sites = new ArrayList<>();
    private final byte[] settings;
    private final Path root;

    /** @param demo the demo's own folder, whose notes are the sound ones */
    NoteSubject(Path demo, Path root) throws IOException {
        this.root = root;
        this.settings = Files.readAllBytes(demo.resolve("entries/journal.yaml"));
        notes(demo.resolve("entries/rigs"), rigs);
        notes(demo.resolve("entries/sites"), sites);
        notes(demo.resolve("entries"), entries);
        entries.add(Files.readAllBytes(demo.resolve("entries/2026-02-13-m82/entry.md")));
        entries.add(Files.readAllBytes(demo.resolve("entries/2025-06-14-ngc6888/entry.md")));
        entries.add(Files.readAllBytes(demo.resolve("entries/2025-08-22-m27/entry.md")));
        entries.add(EVERYTHING.getBytes(StandardCharsets.UTF_8));
        Files.createDirectories(root.resolve("entries/rigs"));
        Files.createDirectories(root.resolve("entries/sites"));
    }

    private static final String EVERYTHING = """
            ---
            title: All keys
            target: M 27
            rig: heron
            site: terrace
            night: 2025-06-14
            exposure: [{count: 48, seconds: 120, filter: dual-band}, {count: 3, seconds: 2 min}]
            guiding: {rms: 0.62 arcsec}
            lost: [{minutes: 45, cause: cabling, note: wrong port}]
            changes: [56.2 mm instead of 55.0 mm behind the corrector]
            versions:
              - {name: gentle, image: gentle.tif, from: stack, steps: [black point: 0.02, stretch: asinh 12, crop]}
              - {name: heavy, image: heavy.png, from: gentle, steps: [noise reduction: 0.9]}
            lessons: [{about: focus, do: refocus after every 3 degrees}]
            closes: [a0#focus]
            ---
            # A heading

            Text with *stress*, `code`, ~~less~~, a [link](a1.md), ![a picture](p.png), a note[^1] and <b>tags</b>.

            | a | b |
            |---|--:|
            | 1 | 2 |

            - [x] done
            - [ ] open

            [^1]: The note.
            """;

    private static void notes(Path folder, List<byte[]> into) throws IOException {
        try (var files = Files.list(folder)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
                into.add(Files.readAllBytes(file));
            }
        }
    }

    @Override
    public String name() {
        return "notes";
    }

    @Override
    public int attack(long seed) throws Throwable {
        int written = write(seed);
        Journal.read(root);
        return written;
    }

    /** All files of this seed; each is one input. */
    int write(long seed) throws IOException {
        Random random = new Random(seed);
        Mutation mutation = new Mutation(random);
        for (int i = 0; i < ENTRIES; i++) {
            put("a" + i + ".md", mutation.of(entries.get(random.nextInt(entries.size()))));
        }
        for (int i = 0; i < 3; i++) {
            put("rigs/" + (i == 0 ? "heron" : "rig" + i) + ".md", mutation.of(rigs.get(random.nextInt(rigs.size()))));
            put(
                    "sites/" + (i == 0 ? "terrace" : "site" + i) + ".md",
                    mutation.of(sites.get(random.nextInt(sites.size()))));
        }
        put("journal.yaml", mutation.of(settings));
        return ENTRIES + 7;
    }

    Path root() {
        return root;
    }

    private void put(String name, byte[] bytes) throws IOException {
        Files.write(root.resolve("entries").resolve(name), bytes);
    }
}
