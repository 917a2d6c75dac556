package noctuary.fuzz;

import java.nio.file.Path;
import java.util.List;
import noctuary.journal.Progress;
import noctuary.journal.Rendering;
import noctuary.site.SiteHarm;

/** The same damaged journals rendered whole: what notes hold must not run, and no template may stumble over it. */
final class SiteSubject implements Subject {
    private final NoteSubject notes;
    private final Path output;

    SiteSubject(NoteSubject notes, Path output) {
        this.notes = notes;
        this.output = output;
    }

    @Override
    public String name() {
        return "sites";
    }

    @Override
    public int attack(long seed) throws Throwable {
        int written = notes.write(seed);
        Folders.clear(output);
        Rendering.render(notes.root(), output, Progress.SILENT);
        List<String> harm = SiteHarm.found(output);
        if (!harm.isEmpty()) {
            throw new IllegalStateException("a page could run: " + harm.get(0));
        }
        return written;
    }
}
