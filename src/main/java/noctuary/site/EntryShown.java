package noctuary.site;

import java.util.List;
import java.util.Optional;
import noctuary.entry.Entry;
import noctuary.entry.Typed;
import noctuary.keep.Digest;
import noctuary.measure.EntrySheet;
import noctuary.site.page.Link;

/** All that an entry's page is made from, in one word: the same word, the same page. */
final class EntryShown {
    private final Ledger ledger;

    EntryShown(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Empty when a file has no identity. */
    String of(int at, List<Link> changes) {
        List<EntrySheet> entries = ledger.content().entries();
        EntrySheet sheet = entries.get(at);
        Entry entry = sheet.entry();
        if (sheet.key().isEmpty()) {
            return "";
        }
        Digest digest = new Digest()
                .text(ledger.content().journal().settings().toString())
                .text(entry.toString())
                .text(sheet.key());
        String slug = entry.slug();
        return digest.text(text(ledger.rig(sheet).map(rig -> rig.note())))
                .text(text(ledger.site(sheet)))
                .text(text(ledger.target(sheet).map(t -> t.id() + " " + t.name())))
                .text(text(Optional.ofNullable(ledger.advice().limits().get(slug))))
                .text(text(Optional.ofNullable(ledger.advice().plans().get(slug))))
                .text(ledger.versions(sheet).toString())
                .text(ledger.pictures(sheet).toString())
                .text(ledger.unshown(Address.entry(slug)).toString())
                .text(changes.toString())
                .text(at > 0 ? name(entries.get(at - 1)) : "")
                .text(at + 1 < entries.size() ? name(entries.get(at + 1)) : "")
                .hex();
    }

    private static String name(EntrySheet sheet) {
        Typed<String> title = sheet.entry().title();
        return sheet.entry().slug() + " " + title.value();
    }

    private static String text(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }
}
