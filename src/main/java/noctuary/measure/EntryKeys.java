package noctuary.measure;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import noctuary.entry.Entry;
import noctuary.entry.Journal;
import noctuary.entry.Typed;
import noctuary.keep.Branches;
import noctuary.keep.Digest;
import noctuary.keep.Glance;
import noctuary.keep.Packing;

/** All that an entry's sheet follows from, in one word: the note, its rig and site, and what its files look like from outside. */
final class EntryKeys {
    private static final Packing<Entry> PACKING = Packing.of(Entry.class);

    private final Journal journal;
    private final String tops;
    private final Map<String, String> places = new HashMap<>();

    EntryKeys(Journal journal, Iterable<Path> tops) {
        this.journal = journal;
        this.tops = tops.toString();
        journal.rigs()
                .forEach((id, rig) -> places.put(
                        "rig " + id, new Digest().text(rig.toString()).hex()));
        journal.sites()
                .forEach((id, site) -> places.put(
                        "site " + id, new Digest().text(site.toString()).hex()));
    }

    /** Empty where nobody looked at the files before they were read. */
    String of(Entry entry) {
        Branches looks = journal.looks();
        if (!looks.trouble().isEmpty()) {
            return "";
        }
        Digest digest = new Digest()
                .bytes(PACKING.pack(entry))
                .text(tops)
                .text(entry.rig()
                        .map(Typed::value)
                        .map(id -> places.get("rig " + id))
                        .orElse(""))
                .text(entry.site()
                        .map(Typed::value)
                        .map(id -> places.get("site " + id))
                        .orElse(""));
        Set<Path> branches = new LinkedHashSet<>();
        Stream.concat(entry.frames().stream(), entry.stack().stream()).forEach(file -> {
            Optional<Path> branch = looks.branch(file);
            branch.ifPresentOrElse(branches::add, () -> digest.text(Glance.at(file)));
        });
        branches.forEach(branch -> digest.text(looks.around(branch).orElse("")));
        return digest.hex();
    }
}
