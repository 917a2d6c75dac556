package noctuary.site;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import noctuary.measure.EntrySheet;
import noctuary.site.page.FeedPage;

/**
 * The feed of a published journal: the newest entries that tell their night. An entry counts as changed at the end of
 * its night, noon of the next day in UTC, because a page must not depend on when it was made.
 */
final class FeedPages {
    static final String PATH = "feed.xml";

    private static final int MOST = 30;

    private final Ledger ledger;
    private final Web web;

    FeedPages(Ledger ledger) {
        this.ledger = ledger;
        this.web = new Web(ledger);
    }

    /** Whether the settings publish the journal and an entry tells its night. */
    static boolean exists(Ledger ledger) {
        return ledger.content().journal().settings().publishedAt().isPresent()
                && ledger.content().entries().stream()
                        .anyMatch(sheet -> sheet.night().value().isPresent());
    }

    /** Newest night first. */
    private static List<EntrySheet> dated(Ledger ledger) {
        return ledger.content().entries().stream()
                .filter(sheet -> sheet.night().value().isPresent())
                .sorted(Comparator.comparing((EntrySheet sheet) -> lastNight(sheet))
                        .reversed())
                .limit(MOST)
                .toList();
    }

    /** Only where it {@link #exists}. */
    FeedPage page() {
        List<EntrySheet> entries = dated(ledger);
        var settings = ledger.content().journal().settings();
        return new FeedPage(
                web.address(""),
                web.address(PATH),
                written(settings.title()),
                written(settings.keeper().orElse(settings.title())),
                updated(entries.get(0)),
                entries.stream().map(this::item).toList());
    }

    private FeedPage.Item item(EntrySheet sheet) {
        String target = ledger.targetName(sheet);
        return new FeedPage.Item(
                web.address(Address.entry(sheet.entry().slug()).path()),
                written(sheet.entry().title().value()),
                updated(sheet),
                written(EntryPages.description(sheet, target)),
                written(target));
    }

    private static LocalDate lastNight(EntrySheet sheet) {
        return sheet.nights().stream()
                .max(Comparator.naturalOrder())
                .orElseGet(() -> sheet.night().value().orElseThrow());
    }

    private static String updated(EntrySheet sheet) {
        return lastNight(sheet).plusDays(1) + "T12:00:00Z";
    }

    /** With a mark for each character that XML 1.0 (section 2.2) forbids. */
    private static String written(String text) {
        return text.codePoints()
                .map(c -> allowed(c) ? c : 0xFFFD)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean allowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || c >= 0x20 && c <= 0xD7FF
                || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000;
    }
}
