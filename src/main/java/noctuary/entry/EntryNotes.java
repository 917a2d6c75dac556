package noctuary.entry;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import noctuary.keep.Branches;
import noctuary.keep.Digest;
import noctuary.keep.Memo;

/** Reads the notes of entries, each by itself, so that those around which nothing changed need not be read again. */
final class EntryNotes {
    private final NoteFiles files;
    private final Path root;
    private final Branches looks;
    private final Map<Path, String> pages;
    private final SettingsReader settings;
    private final Set<String> rigs;
    private final Set<String> sites;
    private final Memo memo;
    private final String setting;

    /**
     * @param looks what the folder of the notes looked like before
     * @param pages of all notes
     * @param rigs ids of those that exist
     * @param sites as rigs
     */
    EntryNotes(
            NoteFiles files,
            Path root,
            Branches looks,
            Map<Path, String> pages,
            SettingsReader settings,
            Set<String> rigs,
            Set<String> sites,
            Memo memo) {
        this.files = files;
        this.root = root;
        this.looks = looks;
        this.pages = pages;
        this.settings = settings;
        this.rigs = rigs;
        this.sites = sites;
        this.memo = memo;
        this.setting = settings + "\n" + rigs + "\n" + sites + "\n" + root;
    }

    /** In the order of the files. */
    List<KeptNote> read(List<NoteFiles.Found> found) {
        return found.parallelStream().map(this::read).toList();
    }

    private KeptNote read(NoteFiles.Found file) {
        String key = looks.around(file.file())
                .map(branch -> new Digest()
                        .text(file.name())
                        .text(file.file().toString())
                        .text(branch)
                        .text(setting)
                        .hex())
                .orElse("");
        return memo.recall("notes", KeptNote.PACKING, key, note -> note.holds(looks, pages), () -> anew(file));
    }

    private KeptNote anew(NoteFiles.Found file) {
        var ledger = new Ledger();
        var margin = new Margin(files.shown(file.file()), ledger);
        var trail = new Trail(looks);
        var asked = new Pages(pages);
        Note note = Note.of(NoteText.read(file.file(), margin), margin);
        NoteHtml.Page page = NoteHtml.of(note, new NoteLinks(root, file.folder(), trail, asked, margin), margin);
        var finder = new FileFinder(new Reach(root, settings.settings().archive(), trail));
        EntryReader.Draft draft =
                new EntryReader(settings, rigs, sites, finder).read(file.name(), file.folder(), note, page, margin);
        return KeptNote.of(draft, new ArrayList<>(ledger.notes()), trail, asked, looks.branch(file.file()));
    }
}
