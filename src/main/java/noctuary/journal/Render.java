package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Journal;
import noctuary.keep.Branches;
import noctuary.site.DrawnEntry;

/**
 * One render into a folder: what the last one left for it, and what it leaves for the next.
 *
 * @param looks what the folder of the notes looked like before it was read
 * @param rest what else is read looked like, and the program
 */
record Render(Path root, Path output, Branches looks, String rest) {

    /** To be asked for before anything is read. */
    static Render of(Path root, Path output) throws IOException {
        Path entries = root.toRealPath().resolve("entries");
        return new Render(root, output, Places.entries(root).of(entries), Places.rest(root));
    }

    /** What the last render left, when its site is still as it left it. */
    Optional<Standing> former() throws IOException {
        Optional<Standing> before = Standing.find(Places.standing(root, output));
        if (before.isPresent()) {
            Leftovers.clear(output.toAbsolutePath().normalize());
        }
        return before.filter(standing -> standing.stands(output));
    }

    /** Whether nothing has changed since. */
    boolean same(Standing before) {
        return before.holds(read());
    }

    /** The site with other words, when nothing but those of one note changed. */
    Optional<Rendering.Outcome> reworded(Standing before) throws IOException {
        Optional<Wording> wording = Wording.find(words()).filter(w -> w.site().equals(before.site()));
        if (wording.isEmpty() || !before.trailHolds()) {
            return Optional.empty();
        }
        Optional<Map<String, byte[]>> files = new Rewording(root, output, wording.get()).make(looks, rest);
        if (files.isEmpty()) {
            return Optional.empty();
        }
        Rendering.Outcome told = before.outcome();
        var outcome = new Rendering.Outcome(told.entries(), told.files(), 0, false, told.problems());
        String site = keep(before.trail(), outcome);
        ShownFiles.of(root, output).forget(files.get().keySet(), site);
        wording.get().seen(looks, site).keep(words());
        return Optional.of(outcome);
    }

    /**
     * Leaves a whole site to the next render.
     *
     * @return what the site looks like
     */
    String keep(Journal journal, List<DrawnEntry> entries, Rendering.Outcome outcome) {
        String site = keep(journal.trail(), outcome);
        Wording.of(site, rest, journal, entries).keep(words());
        return site;
    }

    /** What the site looks like now, which is left too. */
    private String keep(Map<Path, String> trail, Rendering.Outcome outcome) {
        String site = Standing.site(output);
        new Standing(read(), trail, site, outcome).keep(Places.standing(root, output));
        return site;
    }

    private String read() {
        return looks.whole() + " " + rest;
    }

    private Path words() {
        Path standing = Places.standing(root, output);
        return standing.resolveSibling(standing.getFileName() + "-words");
    }
}
