package noctuary.site;

import java.text.Normalizer;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import noctuary.entry.Entry;
import noctuary.entry.RigNote;
import noctuary.entry.Typed;
import noctuary.measure.EntrySheet;
import noctuary.site.page.FindPage;
import noctuary.site.page.FindPage.Item;
import noctuary.site.page.Link;

/** The page on which things are found, and the words that its box looks through. */
final class FindPages {
    private static final Comparator<Item> BY_NAME = Comparator.comparing(
                    (Item item) -> plain(item.link().text()), ByName.ORDER)
            .thenComparing(item -> item.link().href());

    private final Ledger ledger;
    private final List<Item> items = new ArrayList<>();
    private final FindWords words = new FindWords();

    FindPages(Ledger ledger) {
        this.ledger = ledger;
        ledger.content().entries().forEach(this::entry);
        ledger.content()
                .targets()
                .forEach(t -> add(Link.of(t.name(), Address.FIND.to(Address.target(t.id()))), "target", "", "", ""));
        ledger.content()
                .rigs()
                .values()
                .forEach(rig -> add(
                        Link.of(
                                rig.note().name().value(),
                                Address.FIND.to(Address.rig(rig.note().id()))),
                        "rig",
                        "",
                        parts(rig.note()),
                        rig.note().html()));
        ledger.content()
                .reviews()
                .forEach(r -> add(
                        Link.of(
                                ReviewText.title(r.change()),
                                Address.FIND.to(Address.change(r.change().id()))),
                        "change",
                        r.change().date().map(Object::toString).orElse(""),
                        "",
                        ""));
    }

    private void entry(EntrySheet sheet) {
        Entry entry = sheet.entry();
        String said = String.join(
                " ",
                ledger.targetName(sheet),
                ledger.rigName(sheet),
                ledger.siteName(sheet),
                String.join(" ", sheet.secondsByFilter().keySet()),
                sheet.night().map(night -> Dates.month(YearMonth.from(night))).orElse(""),
                lines(entry));
        String night = sheet.night().map(Object::toString).orElse("");
        add(ledger.entryLink(Address.FIND, sheet), "entry", night, said, entry.html());
    }

    /** What its keys say in words: losses, lessons, changes and steps. */
    private static String lines(Entry entry) {
        return Stream.of(
                        entry.lost().stream().map(lost -> lost.cause() + " " + lost.note()),
                        entry.lessons().stream().map(lesson -> lesson.about() + " " + lesson.todo()),
                        entry.changes().stream().map(Typed::value),
                        entry.versions().stream()
                                .flatMap(version -> version.steps().stream())
                                .map(step -> step.choice())
                                .distinct())
                .flatMap(words -> words)
                .collect(Collectors.joining(" "));
    }

    private static String parts(RigNote rig) {
        return Stream.of(rig.train().stream(), rig.payload().stream())
                .flatMap(parts -> parts.map(RigNote.Part::name))
                .distinct()
                .collect(Collectors.joining(" ", rig.mountName().orElse("") + " ", ""));
    }

    private void add(Link link, String kind, String detail, String facts, String html) {
        items.add(new Item(link, kind, detail));
        words.add(link, kind, detail, facts, html);
    }

    FindPage page(Heads heads) {
        Map<String, List<Item>> groups = new TreeMap<>();
        items.stream()
                .filter(item -> !item.kind().equals("entry"))
                .sorted(BY_NAME)
                .forEach(item -> groups.computeIfAbsent(letter(item.link().text()), letter -> new ArrayList<>())
                        .add(item));
        return new FindPage(
                heads.of(Address.FIND, "Find", "Entries by their facts and words; targets, rigs and changes by name."),
                Address.FIND.to(FindWords.PATH),
                JournalPages.choices(ledger),
                FindFacts.columns(),
                entries(),
                groups.entrySet().stream()
                        .map(e -> new FindPage.Group(e.getKey(), e.getValue()))
                        .toList());
    }

    private List<FindPage.Row> entries() {
        Rows rows = new Rows(ledger, Address.FIND);
        return ledger.content().entries().stream()
                .map(sheet -> new FindPage.Row(rows.row(sheet), FindFacts.of(sheet)))
                .toList();
    }

    FindWords words() {
        return words;
    }

    private static String letter(String name) {
        String first = plain(name).replaceAll("[^A-Za-z0-9].*|(?<=^.).*", "").toUpperCase(Locale.ROOT);
        return first.isEmpty() ? "other" : Character.isDigit(first.charAt(0)) ? "0–9" : first;
    }

    private static String plain(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
    }
}
