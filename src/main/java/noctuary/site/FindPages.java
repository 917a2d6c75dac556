package noctuary.site;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
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
    static final String WORDS = "find/words.js";

    /** Of each note; with 1,500 notes of that length the script is 3 MB. */
    private static final int MOST_LETTERS = 1_600;

    private static final Comparator<Item> BY_NAME = Comparator.comparing(
                    (Item item) -> plain(item.link().text()), ByName.ORDER)
            .thenComparing(item -> item.link().href());

    private final Ledger ledger;
    private final List<Item> items = new ArrayList<>();
    private final List<List<String>> words = new ArrayList<>();

    FindPages(Ledger ledger) {
        this.ledger = ledger;
        ledger.content().entries().forEach(this::entry);
        ledger.content()
                .targets()
                .forEach(t -> add(Link.of(t.name(), Address.FIND.to(Address.target(t.id()))), "target", "", ""));
        ledger.content()
                .rigs()
                .values()
                .forEach(rig -> add(
                        Link.of(
                                rig.note().name().value(),
                                Address.FIND.to(Address.rig(rig.note().id()))),
                        "rig",
                        "",
                        parts(rig.note()) + " " + text(rig.note().html())));
        ledger.content()
                .reviews()
                .forEach(r -> add(
                        Link.of(
                                ReviewText.title(r.change()),
                                Address.FIND.to(Address.change(r.change().id()))),
                        "change",
                        r.change().date().map(Object::toString).orElse(""),
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
                lines(entry),
                text(entry.html()));
        String night = sheet.night().map(Object::toString).orElse("");
        add(ledger.entryLink(Address.FIND, sheet), "entry", night, said);
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

    private void add(Link link, String kind, String detail, String said) {
        items.add(new Item(link, kind, detail));
        String cut = said.substring(0, Math.min(said.length(), MOST_LETTERS));
        words.add(List.of(link.text(), link.href(), kind, detail, cut));
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
                Address.FIND.to(WORDS),
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

    /** A script, because a page opened from a disk may not fetch: rows of name, way, kind, night and words. */
    String words() throws JsonProcessingException {
        return "var noctuaryWords = " + JsonMapper.builder().build().writeValueAsString(words) + ";\n";
    }

    private static String letter(String name) {
        String first = plain(name).replaceAll("[^A-Za-z0-9].*|(?<=^.).*", "").toUpperCase(Locale.ROOT);
        return first.isEmpty() ? "other" : Character.isDigit(first.charAt(0)) ? "0–9" : first;
    }

    private static String plain(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
    }

    private static String text(String html) {
        return html.replaceAll("<[^>]*>", " ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
