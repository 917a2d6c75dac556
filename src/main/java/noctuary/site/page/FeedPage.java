package noctuary.site.page;

import java.util.List;

/**
 * The journal as a feed (RFC 4287). Texts hold no character that XML forbids.
 *
 * @param id whole address of the journal, which is also the feed's name
 * @param self whole address of the feed
 * @param updated as RFC 3339
 */
public record FeedPage(String id, String self, String title, String author, String updated, List<Item> items) {
    public FeedPage {
        items = List.copyOf(items);
    }

    /**
     * @param id whole address of the entry's page, which is also its name
     * @param target empty when not known
     */
    public record Item(String id, String title, String updated, String summary, String target) {}
}
