package noctuary.site;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import noctuary.entry.Entry;
import noctuary.entry.Typed;
import noctuary.keep.Digest;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameSheet;
import noctuary.site.page.Link;

/** All that an entry's page is made from, in one word: the same word, the same page. */
final class EntryShown {
    private final Ledger ledger;
    private final boolean feed;

    EntryShown(Ledger ledger) {
        this.ledger = ledger;
        this.feed = FeedPages.exists(ledger);
    }

    /** Empty when a file has no identity. */
    String of(int at, List<Link> changes) {
        List<EntrySheet> entries = ledger.content().entries();
        EntrySheet sheet = entries.get(at);
        Entry entry = sheet.entry();
        List<FrameSheet> files =
                Stream.concat(sheet.frames().stream(), sheet.stack().stream()).toList();
        if (files.stream().anyMatch(f -> f.measurement().content().isEmpty())) {
            return "";
        }
        Digest digest = new Digest()
                .text(ledger.content().journal().settings().toString())
                .text(Boolean.toString(feed))
                .text(entry.toString());
        files.forEach(f -> file(digest, f));
        String slug = entry.slug();
        return digest.text(text(ledger.rig(sheet).map(rig -> rig.note())))
                .text(text(ledger.site(sheet)))
                .text(text(ledger.target(sheet).map(t -> t.id() + " " + t.name())))
                .text(text(Optional.ofNullable(ledger.advice().limits().get(slug))))
                .text(text(Optional.ofNullable(ledger.advice().plans().get(slug))))
                .text(ledger.versions(sheet).toString())
                .text(ledger.pictures(sheet).toString())
                .text(changes.toString())
                .text(at > 0 ? name(entries.get(at - 1)) : "")
                .text(at + 1 < entries.size() ? name(entries.get(at + 1)) : "")
                .hex();
    }

    /** The rest of the sheet follows from these, the note, the rig and the site. */
    private static void file(Digest digest, FrameSheet file) {
        digest.text(file.name())
                .text(file.measurement().content())
                .text(file.report().imageScale().toString())
                .text(file.notCounted().orElse(""));
    }

    private static String name(EntrySheet sheet) {
        Typed<String> title = sheet.entry().title();
        return sheet.entry().slug() + " " + title.value();
    }

    private static String text(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }
}
