package noctuary.entry;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Settings, with the lines on which the default rig and site stand.
 *
 * @param rig for entries that name none
 * @param site as rig
 */
record SettingsReader(Settings settings, Optional<Typed<String>> rig, Optional<Typed<String>> site) {
    static final String FILE = "entries/journal.yaml";

    private static final String UNTITLED = "Journal";
    private static final String ARCHIVE = "\"archive: {main: ../frames}\"";

    /** @param files says whether the file may be read */
    static SettingsReader read(Path entries, NoteFiles files, Ledger ledger) {
        Path file = entries.resolve("journal.yaml");
        var margin = new Margin(FILE, ledger);
        boolean there = Files.isRegularFile(file);
        if (!there) {
            margin.notice(
                    0,
                    "",
                    "this file is not there; the journal is called " + Margin.quoted(UNTITLED) + " and all is private",
                    "write one with a line such as \"title: My nights\"");
        }
        if (!there || !files.isInside(file)) {
            return bind(new Fields(new Node.Mapping(List.of(), 1, false), margin), entries);
        }
        NoteText text = NoteText.read(file, margin);
        return bind(new Fields(YamlReader.read(text.text(), 0, margin), margin), entries);
    }

    private static SettingsReader bind(Fields fields, Path entries) {
        String title = fields.one("title", Forms::text).map(Typed::value).orElse(UNTITLED);
        Optional<String> keeper = fields.one("keeper", Forms::text).map(Typed::value);
        var site = fields.one("site", Forms::text);
        var rig = fields.one("rig", Forms::text);
        Optional<URI> publishedAt = fields.one("published at", Forms::webFolder).map(Typed::value);
        Map<String, Path> archive = archive(fields, entries);
        Settings.Publish publish = publish(fields.group("publish", "\"publish: {coordinates: no, file names: yes}\""));
        fields.refuseOthers();
        var settings = new Settings(
                title, keeper, site.map(Typed::value), rig.map(Typed::value), publishedAt, archive, publish);
        return new SettingsReader(settings, rig, site);
    }

    private static Settings.Publish publish(Fields fields) {
        boolean coordinates =
                fields.one("coordinates", Forms::yesOrNo).map(Typed::value).orElse(false);
        boolean fileNames =
                fields.one("file names", Forms::yesOrNo).map(Typed::value).orElse(false);
        fields.refuseOthers();
        return new Settings.Publish(coordinates, fileNames);
    }

    private static Map<String, Path> archive(Fields fields, Path entries) {
        Map<String, Path> archive = new LinkedHashMap<>();
        Fields group = fields.group("archive", ARCHIVE);
        for (Node.Pair pair : group.pairs()) {
            group.typed(pair.value(), pair.key(), text -> folder(text, entries)).ifPresent(folder -> {
                archive.put(pair.key(), folder.value());
                if (!Files.isDirectory(folder.value())) {
                    group.margin()
                            .fault(
                                    folder.line(),
                                    pair.key(),
                                    "the archive folder " + Margin.quoted(pair.key()) + " is not there",
                                    "is its disk connected? paths begin at the folder of journal.yaml");
                }
            });
        }
        return archive;
    }

    private static Path folder(String text, Path entries) throws Unfit {
        try {
            return entries.resolve(text).normalize();
        } catch (InvalidPathException e) {
            throw new Unfit(Margin.quoted(text) + " cannot be a folder", "write a path such as ../frames");
        }
    }
}
