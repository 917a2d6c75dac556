package noctuary.fuzz;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import noctuary.journal.Progress;
import noctuary.journal.Rendering;
import noctuary.measure.FrameDraft;
import noctuary.site.SiteHarm;

/**
 * Journals whose notes and headers are well formed, every value in them chosen to upset a page: rendered whole, nothing
 * may run, and the pages are valid HTML, the downloads JSON.
 */
final class ValueSubject implements Subject {
    static final int ENTRIES = 16;
    private static final int CHECKED = 8;

    private final Path root;
    private final Path output;
    private final ObjectMapper json = new ObjectMapper();

    /** Renders once, for templates and classes are read then; the inputs are timed. */
    ValueSubject(Path folder) throws Exception {
        this.root = folder.resolve("values");
        this.output = folder.resolve("values-site");
        write(new Random(0));
        Rendering.render(root, output, Progress.SILENT);
        Markings.of(some(new Random(0)));
    }

    @Override
    public String name() {
        return "values";
    }

    @Override
    public int attack(long seed) throws Throwable {
        Folders.clear(root);
        Folders.clear(output);
        Random random = new Random(seed);
        int written = write(random);
        Rendering.render(root, output, Progress.SILENT);
        return written;
    }

    @Override
    public void judge(long seed) throws Throwable {
        if (Files.isDirectory(output)) {
            require(SiteHarm.found(output), "a page could run: ");
            json.readTree(output.resolve("data/journal.json").toFile());
            require(Markings.of(some(new Random(seed))), "a page is not valid: ");
        }
    }

    /** A few of the pages: the checker takes longer than the render. */
    private Path some(Random random) throws IOException {
        Path some = root.resolveSibling("values-checked");
        Folders.clear(some);
        try (Stream<Path> all = Files.walk(output)) {
            List<Path> pages = new ArrayList<>(
                    all.filter(f -> f.toString().endsWith(".html")).sorted().toList());
            Collections.shuffle(pages, random);
            for (Path page : pages.subList(0, Math.min(CHECKED, pages.size()))) {
                Path copy = some.resolve(output.relativize(page));
                Files.createDirectories(copy.getParent());
                Files.copy(page, copy);
            }
        }
        return some;
    }

    private static void require(List<String> none, String what) {
        if (!none.isEmpty()) {
            throw new IllegalStateException(what + none.size() + ", first " + none.get(0));
        }
    }

    private int write(Random random) throws IOException {
        HostileNotes notes = new HostileNotes(random);
        put("journal.yaml", notes.settings());
        for (String rig : List.of("heron", "wren")) {
            put("rigs/" + rig + ".md", notes.rig());
        }
        put("sites/terrace.md", notes.site());
        for (int i = 0; i < ENTRIES; i++) {
            put("a" + i + "/entry.md", notes.entry(i));
            if (i < 3) {
                frame(random, root.resolve("entries/a" + i + "/f.fits"));
            }
        }
        return ENTRIES + 3 + 4;
    }

    private static void frame(Random random, Path file) {
        Nasties nasties = new Nasties(random);
        FrameDraft draft = FrameDraft.empty(40, 30, 7);
        for (String keyword : List.of("OBJECT", "FILTER", "INSTRUME", "TELESCOP", "BAYERPAT", "PIERSIDE", "ROTATANG")) {
            String word = nasties.word().replace("'", "''");
            draft.card(keyword, "'" + word.substring(0, Math.min(60, word.length())) + "'");
        }
        for (String keyword :
                List.of("EXPTIME", "GAIN", "CCD-TEMP", "XPIXSZ", "FOCALLEN", "AIRMASS", "EGAIN", "STACKCNT")) {
            draft.card(keyword, nasties.number());
        }
        draft.card("DATE-OBS", "'" + nasties.date() + "T22:30:15'");
        draft.write(file);
    }

    private void put(String name, String text) throws IOException {
        Path file = root.resolve("entries").resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
