package noctuary.site;

import java.util.List;
import java.util.Optional;
import noctuary.advice.ExposurePlan;
import noctuary.advice.LimitReport;
import noctuary.entry.Typed;
import noctuary.keep.Digest;
import noctuary.keep.Packing;
import noctuary.measure.EntrySheet;
import noctuary.site.page.Link;

/** All that an entry's page is made from, in one word: the same word, the same page. The entries before and after count apart. */
final class EntryShown {
    private static final Packing<Advised> ADVICE = Packing.of(Advised.class);

    /** What advice says of one entry: packed, which is quicker than printed. */
    private record Advised(Optional<LimitReport> limits, Optional<ExposurePlan> plan) {}

    private final Ledger ledger;
    private final String everywhere;

    EntryShown(Ledger ledger) {
        this.ledger = ledger;
        this.everywhere = ledger.content().journal().settings() + " " + FeedPages.exists(ledger);
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
        String slug = sheet.entry().slug();
        Advised advised = new Advised(
                Optional.ofNullable(ledger.advice().limits().get(slug)),
                Optional.ofNullable(ledger.advice().plans().get(slug)));
        return new Digest()
                .text(everywhere)
                .text(sheet.key())
                .text(ledger.target(sheet).map(t -> t.id() + " " + t.name()).orElse(""))
                .bytes(ADVICE.pack(advised))
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
}
