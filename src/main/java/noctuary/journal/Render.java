package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Journal;
import noctuary.keep.Branches;
import noctuary.site.MadeSite;
import noctuary.site.Piece;

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

    /** The site without reading the journal anew, when so little changed that what was kept is enough. */
    Optional<Rendering.Outcome> again(Standing before) throws IOException, RefusedException {
        Optional<Rendering.Outcome> reworded = reworded(before);
        return reworded.isPresent() ? reworded : restyled(before);
    }

    /** The site with other words, when nothing but those of one note changed. */
    private Optional<Rendering.Outcome> reworded(Standing before) throws IOException {
        Optional<Wording> wording = Wording.find(words()).filter(w -> w.site().equals(before.site()));
        if (wording.isEmpty() || !before.trailHolds()) {
            return Optional.empty();
        }
        Optional<Map<String, byte[]>> files = new Rewording(root, output, wording.get()).make(looks, rest);
        if (files.isEmpty()) {
            return Optional.empty();
        }
        Rendering.Outcome outcome = before.outcome().written();
        String site = keep(before.trail(), outcome);
        ShownFiles.of(root, output).forget(files.get().keySet(), site);
        wording.get().seen(looks, site).keep(words());
        return Optional.of(outcome);
    }

    /** The site with every page under other templates, when nothing but those changed. */
    private Optional<Rendering.Outcome> restyled(Standing before) throws IOException, RefusedException {
        Optional<Styling> styling = Styling.find(styles())
                .filter(s -> s.site().equals(before.site()) && s.read().equals(besidesTemplates()));
        if (styling.isEmpty() || !before.trailHolds()) {
            return Optional.empty();
        }
        ShownFiles shown = ShownFiles.of(root, output);
        Optional<Map<String, Piece>> pieces = new Restyling(root, output, styling.get()).make(shown);
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        Rendering.Outcome outcome = before.outcome().written();
        String site = keep(before.trail(), outcome);
        shown.keep(site, pieces.get());
        styling.get().seen(site).keep(styles());
        Wording.find(words())
                .filter(w -> w.site().equals(before.site()))
                .ifPresent(w -> w.restyled(site, rest).keep(words()));
        return Optional.of(outcome);
    }

    /**
     * Leaves a whole site to the next render.
     *
     * @return what the site looks like
     */
    String keep(Journal journal, MadeSite made, Rendering.Outcome outcome) {
        String site = keep(journal.trail(), outcome);
        Wording.of(site, rest, journal, made.entries()).keep(words());
        Styling.of(site, besidesTemplates(), made).keep(styles());
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

    private String besidesTemplates() {
        return looks.whole() + " " + Program.identity();
    }

    private Path words() {
        return beside("-words");
    }

    private Path styles() {
        return beside("-styles");
    }

    private Path beside(String end) {
        Path standing = Places.standing(root, output);
        return standing.resolveSibling(standing.getFileName() + end);
    }
}
