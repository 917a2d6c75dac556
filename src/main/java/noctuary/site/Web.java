package noctuary.site;

import java.net.URI;
import java.util.List;
import java.util.Optional;
import noctuary.measure.EntrySheet;
import noctuary.site.page.Head;

/** What pages say of themselves to the web, where the settings say that they are published, and where. */
final class Web {
    /** Wide enough for a card, and no more than a message needs to carry. */
    private static final int CARD_WIDTH = 1200;

    private final Ledger ledger;
    private final Optional<URI> top;
    private final String feed;
    private final Optional<Head.Card> newest;

    Web(Ledger ledger) {
        this.ledger = ledger;
        this.top = ledger.content().journal().settings().publishedAt();
        this.feed = top.isPresent() && FeedPages.exists(ledger) ? address(FeedPages.PATH) : "";
        this.newest = top.isPresent() ? newestCard() : Optional.empty();
    }

    /** With the newest picture as its card; null for a journal that stays at home. */
    Head.Published of(Address page) {
        return top.isEmpty() ? null : published(page, "website", newest);
    }

    /** As {@link #of(Address)} for the page of an entry, with its own picture. */
    Head.Published of(Address page, EntrySheet sheet) {
        return top.isEmpty() ? null : published(page, "article", card(sheet));
    }

    /** Where a path from the top folder stands on the web; only for a published journal. */
    String address(String path) {
        return top.orElseThrow() + Address.encoded(path);
    }

    private Head.Published published(Address page, String type, Optional<Head.Card> card) {
        return new Head.Published(address(page.path()), type, feed, card.orElse(null));
    }

    private Optional<Head.Card> newestCard() {
        return ledger.content().entries().stream()
                .map(this::card)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Head.Card> card(EntrySheet sheet) {
        Plates plates = new Plates(ledger, Address.JOURNAL);
        return plates.face(sheet)
                .map(name -> card(ledger.pictures(sheet).get(name).sizes(), plates.alternative(sheet, name)));
    }

    /** The widest that is no wider than a card, else the narrowest. */
    private Head.Card card(List<SiteContent.Size> sizes, String alt) {
        SiteContent.Size size = sizes.stream()
                .filter(s -> s.width() <= CARD_WIDTH)
                .reduce((narrower, wider) -> wider)
                .orElse(sizes.get(0));
        return new Head.Card(address(size.path()), size.width(), size.height(), alt);
    }
}
