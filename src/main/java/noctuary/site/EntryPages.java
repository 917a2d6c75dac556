package noctuary.site;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.site.page.EntryPage;
import noctuary.site.page.Labelled;
import noctuary.site.page.Link;

/** One page an entry. */
final class EntryPages {
    private final Ledger ledger;
    private final Heads heads;
    private final Charts charts;

    EntryPages(Ledger ledger, Heads heads, Charts charts) {
        this.ledger = ledger;
        this.heads = heads;
        this.charts = charts;
    }

    /**
     * Without its note's words and its ways to other entries.
     *
     * @param at position among the entries, newest first
     */
    EntryPage page(int at) {
        EntrySheet sheet = ledger.content().entries().get(at);
        Address here = Address.entry(sheet.entry().slug());
        String title = sheet.entry().title().value();
        String target = ledger.targetName(sheet);
        Facts facts = new Facts(here, ledger.discretion());
        EntryPictures pictures = new EntryPictures(ledger, here, sheet);
        FrameRows frames = new FrameRows(sheet, ledger.discretion());
        return new EntryPage(
                heads.of(here, sheet, description(sheet, target)),
                title,
                ledger.targetLink(here, sheet),
                nights(here, sheet),
                ledger.rigLink(here, sheet),
                ledger.siteName(sheet),
                pictures.hero(),
                pictures.heroCaption(),
                null,
                glance(sheet),
                new AdvisedParts(ledger).of(sheet),
                new FactGroups(facts, sheet).all(),
                filters(facts, sheet),
                pictures.stars(),
                SkyRows.of(ledger, sheet),
                sheet.frames().size() > 1 ? charts.course(sheet) : null,
                observations(sheet),
                DriftText.of(sheet.courses()),
                PlaneRows.of(sheet),
                frames.driftUnit(),
                frames.rows(),
                pictures.versions(),
                sheet.entry().lost().stream().map(EntryPages::lost).toList(),
                changes(here, sheet),
                sheet.entry().lessons().stream()
                        .map(l -> new EntryPage.LessonRow(anchor(l), l.about(), l.todo()))
                        .toList(),
                new Rows(ledger, here).problems(sheet.problems()),
                null,
                null);
    }

    /**
     * Its note's words and its ways to the entries before and after.
     *
     * @param key of the page without them
     * @param shown of the whole page
     */
    ToldEntry telling(String key, String shown, int at) {
        List<EntrySheet> entries = ledger.content().entries();
        Entry entry = entries.get(at).entry();
        Address here = Address.entry(entry.slug());
        return new ToldEntry(
                entry.slug(),
                key,
                shown,
                NoteBody.under(2, entry.html(), ledger.unshown(here)),
                at + 1 < entries.size() ? ledger.entryLink(here, entries.get(at + 1)) : null,
                at > 0 ? ledger.entryLink(here, entries.get(at - 1)) : null);
    }

    /** In one line, for lists of pages elsewhere. */
    static String description(EntrySheet sheet, String target) {
        String night =
                sheet.night().map(date -> ", night of " + Dates.reading(date)).orElse("");
        String exposure = sheet.number(Figure.EXPOSURE)
                .map(q -> ", " + Numerals.of(q) + " of exposure")
                .orElse("");
        return (target.isEmpty() ? "An image" : target) + night + exposure + ".";
    }

    /** The lines of its note that make a change. */
    List<Link> changes(int at) {
        EntrySheet sheet = ledger.content().entries().get(at);
        return changes(Address.entry(sheet.entry().slug()), sheet);
    }

    private List<Link> changes(Address here, EntrySheet sheet) {
        return sheet.entry().changes().stream()
                .map(c -> ChangeMarks.line(ledger.content(), here, sheet.entry().slug(), c.value()))
                .toList();
    }

    private static String anchor(Entry.Lesson lesson) {
        return lesson.id().substring(lesson.id().indexOf('#') + 1);
    }

    private static List<EntryPage.NightOf> nights(Address here, EntrySheet sheet) {
        List<LocalDate> nights =
                sheet.nights().isEmpty() ? sheet.night().value().stream().toList() : sheet.nights();
        return nights.stream()
                .map(night -> new EntryPage.NightOf(
                        night.toString(), Dates.reading(night), here.to(Address.NIGHTS) + "#night-" + night))
                .toList();
    }

    /** The five numbers that a keeper looks for first; absent ones are left out here and explained among the facts. */
    private static List<Labelled> glance(EntrySheet sheet) {
        return Stream.of(
                        Figure.EXPOSURE,
                        Figure.FWHM_ARCSEC,
                        Figure.ELLIPTICITY,
                        Figure.IMAGE_SCALE,
                        Figure.BACKGROUND_NOISE)
                .flatMap(figure -> sheet.number(figure).map(Numerals::of).stream()
                        .map(value -> new Labelled(glanceLabel(figure, sheet), value)))
                .toList();
    }

    private static String glanceLabel(Figure figure, EntrySheet sheet) {
        String made = figure == Figure.EXPOSURE ? SubExposures.of(sheet) : "";
        return figure.label() + (made.isEmpty() ? "" : ", " + made);
    }

    private static List<EntryPage.FilterRow> filters(Facts facts, EntrySheet sheet) {
        double longest = sheet.exposureByFilter().values().stream()
                .flatMap(fact -> fact.value().stream())
                .mapToDouble(q -> q.value())
                .max()
                .orElse(1);
        return sheet.exposureByFilter().entrySet().stream()
                .map(e -> new EntryPage.FilterRow(
                        facts.quantity("filter", e.getKey().isEmpty() ? "no filter told" : e.getKey(), e.getValue()),
                        (int) Math.round(100 * e.getValue().map(q -> q.value()).orElse(0.0) / longest)))
                .toList();
    }

    private List<EntryPage.ObservationRow> observations(EntrySheet sheet) {
        boolean several = sheet.courses().size() > 1;
        Discretion discretion = ledger.discretion();
        return sheet.courses().stream()
                .flatMap(course -> course.observations().stream()
                        .map(seen -> new EntryPage.ObservationRow(
                                several ? Dates.reading(course.night()) : "",
                                discretion.text(seen.text()),
                                discretion.text(seen.evidence()))))
                .toList();
    }

    private static EntryPage.LostRow lost(Entry.Lost lost) {
        return new EntryPage.LostRow(Numerals.duration(lost.minutes() * 60), lost.cause(), lost.note());
    }
}
