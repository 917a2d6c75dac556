package noctuary.site;

import java.util.List;
import java.util.Optional;
import noctuary.entry.Typed;
import noctuary.keep.Digest;
import noctuary.measure.EntrySheet;
import noctuary.site.page.Link;

/** All that an entry's page is made from, in one word: the same word, the same page. The entries before and after count apart. */
final class EntryShown {
    private final Ledger ledger;
    private final boolean feed;

    EntryShown(Ledger ledger) {
        this.ledger = ledger;
        this.feed = FeedPages.exists(ledger);
    }

    /** Of the page with its ways to the entries before and after; empty when {@code self} is. */
    String between(String self, int at) {
        List<EntrySheet> entries = ledger.content().entries();
        return self.isEmpty()
                ? ""
                : new Digest()
                        .text(self)
                        .text(at > 0 ? name(entries.get(at - 1)) : "")
                        .text(at + 1 < entries.size() ? name(entries.get(at + 1)) : "")
                        .hex();
    }

    /** Of all else on the page; empty when a file has no identity. */
    String of(int at, List<Link> changes) {
        EntrySheet sheet = ledger.content().entries().get(at);
        if (sheet.key().isEmpty()) {
            return "";
        }
        Digest digest = new Digest()
                .text(ledger.content().journal().settings().toString())
                .text(Boolean.toString(feed))
                .text(sheet.key());
        String slug = sheet.entry().slug();
        return digest.text(text(ledger.target(sheet).map(t -> t.id() + " " + t.name())))
                .text(text(Optional.ofNullable(ledger.advice().limits().get(slug))))
                .text(text(Optional.ofNullable(ledger.advice().plans().get(slug))))
                .text(ledger.versions(sheet).toString())
                .text(ledger.pictures(sheet).toString())
                .text(ledger.unshown(Address.entry(slug)).toString())
                .text(changes.toString())
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
