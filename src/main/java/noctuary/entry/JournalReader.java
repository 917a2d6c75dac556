package noctuary.entry;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import noctuary.keep.Branches;
import noctuary.keep.Memo;

/** Reads settings, rigs and sites, then the entries that name them, then what entries say of each other. */
final class JournalReader {
    private final Ledger ledger = new Ledger();
    private final Path root;
    private final Branches looks;
    private final Memo memo;
    private final NoteFiles files;
    private final Map<Path, String> pages = new HashMap<>();
    private final Trail trail;
    private final Map<Path, String> places = new TreeMap<>();

    /** @param looks what the folder of the notes looked like before, or unknown */
    JournalReader(Path root, Branches looks, Memo memo) {
        this.root = real(root);
        this.looks = looks.of(this.root.resolve("entries"));
        this.memo = memo;
        this.files = new NoteFiles(this.root, ledger);
        this.trail = new Trail(this.looks);
    }

    Journal read() {
        Path entriesFolder = root.resolve("entries");
        if (!Files.isDirectory(entriesFolder)) {
            new Margin("entries", ledger)
                    .fault(0, "", "this folder is not there", "lay out a journal with: noctuary begin DIR");
            var none = new Settings(
                    "Journal",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Map.of(),
                    new Settings.Publish(false, false));
            return new Journal(
                    root,
                    none,
                    Map.of(),
                    Map.of(),
                    List.of(),
                    ledger.problems(),
                    trail.places(),
                    looks,
                    NoteFacts.NONE);
        }
        SettingsReader settings = SettingsReader.read(entriesFolder, files, ledger);
        settings.settings().archive().values().forEach(trail::pass);
        List<NoteFiles.Found> rigFiles = files.in("rigs");
        List<NoteFiles.Found> siteFiles = files.in("sites");
        List<NoteFiles.Found> entryFiles = files.entries();
        rigFiles.forEach(this::rigPage);
        entryFiles.forEach(this::page);
        Map<String, RigNote> rigs = rigs(rigFiles);
        Map<String, Site> sites = sites(siteFiles);
        checkDefault("rig", settings.rig(), rigs.keySet());
        checkDefault("site", settings.site(), sites.keySet());
        List<KeptNote> notes = new EntryNotes(files, root, looks, pages, settings, rigs.keySet(), sites.keySet(), memo)
                .read(entryFiles);
        List<Entry> entries = entries(notes);
        places.putAll(trail.places());
        return new Journal(
                root,
                settings.settings(),
                rigs,
                sites,
                entries,
                ledger.problems(),
                places,
                looks,
                NoteFacts.of(notes, root, looks));
    }

    /** Of the note in one branch of {@code entries}. */
    Optional<NoteWords> again(Path branch) {
        SettingsReader settings = SettingsReader.read(root.resolve("entries"), files, ledger);
        List<NoteFiles.Found> rigFiles = files.in("rigs");
        List<NoteFiles.Found> siteFiles = files.in("sites");
        List<NoteFiles.Found> entryFiles = files.entries();
        rigFiles.forEach(this::rigPage);
        entryFiles.forEach(this::page);
        List<NoteFiles.Found> wanted = entryFiles.stream()
                .filter(found -> looks.branch(found.file()).equals(Optional.of(branch)))
                .toList();
        return new EntryNotes(files, root, looks, pages, settings, names(rigFiles), names(siteFiles), memo)
                .read(wanted).stream()
                        .findFirst()
                        .map(n -> new NoteWords(
                                n.entry().slug(), n.facts(), n.entry().html()));
    }

    private static Set<String> names(List<NoteFiles.Found> found) {
        return found.stream().map(NoteFiles.Found::name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private void rigPage(NoteFiles.Found found) {
        pages.put(found.file(), "rigs/" + found.name() + "/index.html");
    }

    private void page(NoteFiles.Found found) {
        String page = "entries/" + found.name() + "/index.html";
        pages.put(found.file(), page);
        pages.putIfAbsent(found.file().resolveSibling(found.name()), page);
        if (!found.folder().equals(root.resolve("entries"))) {
            pages.put(found.folder(), page);
        }
    }

    private Map<String, RigNote> rigs(List<NoteFiles.Found> found) {
        List<RigNote> rigs = new ArrayList<>();
        for (NoteFiles.Found file : found) {
            Margin margin = margin(file);
            Note note = note(file, margin);
            rigs.add(RigReader.read(file.name(), note, html(file, note, margin), margin));
        }
        rigs.sort(Comparator.comparing((RigNote rig) -> rig.from().orElse(LocalDate.MAX))
                .thenComparing(RigNote::id));
        Map<String, RigNote> byId = new LinkedHashMap<>();
        rigs.forEach(rig -> byId.put(rig.id(), rig));
        return byId;
    }

    private Map<String, Site> sites(List<NoteFiles.Found> found) {
        Map<String, Site> sites = new LinkedHashMap<>();
        for (NoteFiles.Found file : found) {
            Margin margin = margin(file);
            Note note = note(file, margin);
            sites.put(file.name(), SiteReader.read(file.name(), note, html(file, note, margin), margin));
        }
        return sites;
    }

    private List<Entry> entries(List<KeptNote> notes) {
        var closing = new Closing();
        for (KeptNote note : notes) {
            ledger.add(note.notes());
            note.trail().forEach(places::putIfAbsent);
            closing.open(note.entry().lessons());
        }
        return notes.stream()
                .map(note -> note.closes().isEmpty()
                        ? note.entry()
                        : note.entry()
                                .closing(closing.closed(
                                        note.closes(), new Margin(note.entry().file(), ledger))))
                .toList();
    }

    private void checkDefault(String key, Optional<Typed<String>> id, Set<String> known) {
        id.ifPresent(typed -> {
            try {
                EntryReader.known(typed.value(), key, known);
            } catch (Unfit e) {
                new Margin(SettingsReader.FILE, ledger).fault(typed.line(), key, e);
            }
        });
    }

    private static Note note(NoteFiles.Found file, Margin margin) {
        return Note.of(NoteText.read(file.file(), margin), margin);
    }

    private NoteHtml.Page html(NoteFiles.Found file, Note note, Margin margin) {
        return NoteHtml.of(note, new NoteLinks(root, file.folder(), trail, new Pages(pages), margin), margin);
    }

    private Margin margin(NoteFiles.Found file) {
        return new Margin(files.shown(file.file()), ledger);
    }

    private static Path real(Path root) {
        try {
            return root.toRealPath();
        } catch (IOException e) {
            return root.toAbsolutePath().normalize();
        }
    }
}
