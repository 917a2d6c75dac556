package noctuary.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import noctuary.entry.Settings;
import noctuary.measure.EntrySheet;
import noctuary.site.page.Head;
import noctuary.site.page.Link;

/** The start of every page: title, description, and the way to the sections that exist. */
final class Heads {
    private static final Map<String, Address> SECTIONS = sections();

    private final Settings settings;
    private final Web web;
    private final List<String> stylesheets;

    /** @param stylesheets paths from the top folder */
    Heads(Ledger ledger, List<String> stylesheets) {
        this.settings = ledger.content().journal().settings();
        this.web = new Web(ledger);
        this.stylesheets = List.copyOf(stylesheets);
    }

    Head of(Address page, String title, String description) {
        return of(page, title, description, web.of(page));
    }

    /** For the page of an entry. */
    Head of(Address page, EntrySheet sheet, String description) {
        return of(page, sheet.entry().title().value(), description, web.of(page, sheet));
    }

    private Head of(Address page, String title, String description, Head.Published published) {
        String section =
                page.path().contains("/") ? page.path().substring(0, page.path().indexOf('/')) : "";
        List<Link> nav = SECTIONS.entrySet().stream()
                .map(e -> new Link(
                        e.getKey(),
                        page.to(e.getValue()),
                        section.equals(e.getValue().path().replaceFirst("/?index.html", ""))))
                .toList();
        List<String> sheets = stylesheets.stream().map(page::to).toList();
        return new Head(
                title,
                description,
                page.root(),
                settings.title(),
                settings.keeper().orElse(""),
                sheets,
                published,
                nav);
    }

    private static Map<String, Address> sections() {
        Map<String, Address> sections = new LinkedHashMap<>();
        sections.put("Journal", Address.JOURNAL);
        sections.put("Targets", Address.TARGETS);
        sections.put("Rigs", Address.RIGS);
        sections.put("Changes", Address.CHANGES);
        sections.put("Nights", Address.NIGHTS);
        sections.put("Lessons", Address.LESSONS);
        sections.put("Choices", Address.CHOICES);
        sections.put("Find", Address.FIND);
        sections.put("Method", Address.METHOD);
        sections.put("Data", Address.DOWNLOADS);
        return sections;
    }
}
