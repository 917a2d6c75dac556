package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import noctuary.advice.LessonState;
import noctuary.fact.Problem;
import noctuary.measure.EntrySheet;
import noctuary.site.page.EntryPage;
import noctuary.site.page.JournalPage;
import noctuary.site.page.Labelled;
import noctuary.site.page.Link;

/** The front page. */
final class JournalPages {
    private static final int LATEST = 5;

    private final Ledger ledger;
    private final Heads heads;
    private final Charts charts;

    JournalPages(Ledger ledger, Heads heads, Charts charts) {
        this.ledger = ledger;
        this.heads = heads;
        this.charts = charts;
    }

    JournalPage page() {
        Address here = Address.JOURNAL;
        SiteContent content = ledger.content();
        List<EntrySheet> entries = content.entries();
        List<Usage> usage = Usage.of(ledger);
        List<ChangeMarks.Mark> changes = ChangeMarks.of(content);
        Rows rows = new Rows(ledger, here);
        Plates plates = new Plates(ledger, here);
        String title = content.journal().settings().title();
        List<Labelled> totals = totals(entries, usage);
        return new JournalPage(
                heads.of(
                        here,
                        title,
                        "A record of " + totals.get(0).value() + " "
                                + totals.get(0).label()
                                + " of deep-sky images: exposure, sharpness, rigs and what was learnt."),
                latest(entries).stream().map(e -> rows.teaser(e, plates)).toList(),
                totals,
                charts.hoursByMonth(usage),
                charts.sharpness(here, entries, changes),
                changes.stream().map(change -> mark(here, change)).toList(),
                lessons(here),
                choices(ledger),
                rows.rows(entries),
                rows.problems(problems()));
    }

    /** The newest entry with a picture leads; the others follow, newest first. */
    private List<EntrySheet> latest(List<EntrySheet> entries) {
        List<EntrySheet> latest = new ArrayList<>(entries.subList(0, Math.min(LATEST, entries.size())));
        latest.stream()
                .filter(sheet -> !ledger.pictures(sheet).isEmpty())
                .findFirst()
                .ifPresent(lead -> {
                    latest.remove(lead);
                    latest.add(0, lead);
                });
        return latest;
    }

    private JournalPage.Lessons lessons(Address here) {
        return new JournalPage.Lessons(
                ledger.advice().lessons().stream()
                        .filter(LessonState::open)
                        .map(l -> new EntryPage.LessonRow(l.id(), l.about(), l.todo()))
                        .toList(),
                Link.of("All lessons", here.to(Address.LESSONS)),
                Link.of("Sheet for the next night", here.to(Address.SHEET)));
    }

    private JournalPage.ChangeMark mark(Address here, ChangeMarks.Mark change) {
        String href = here.to(change.page());
        return new JournalPage.ChangeMark(
                change.date().toString(), Link.of(change.title(), href), change.verdict(), change.tone());
    }

    private List<Labelled> totals(List<EntrySheet> entries, List<Usage> usage) {
        long nights = usage.stream().map(Usage::night).distinct().count();
        double seconds = usage.stream().mapToDouble(Usage::seconds).sum();
        long targets = ledger.content().targets().size();
        int rigs = ledger.content().rigs().size();
        return List.of(
                new Labelled(entries.size() == 1 ? "entry" : "entries", "" + entries.size()),
                new Labelled(nights == 1 ? "night" : "nights", "" + nights),
                new Labelled("hours of exposure", Numerals.fixed(seconds / 3600, 1)),
                new Labelled(targets == 1 ? "target" : "targets", "" + targets),
                new Labelled(rigs == 1 ? "rig" : "rigs", "" + rigs));
    }

    /** What lists of entries can be narrowed to. */
    static JournalPage.Choices choices(Ledger ledger) {
        List<EntrySheet> entries = ledger.content().entries();
        return new JournalPage.Choices(
                Ledger.distinct(entries.stream().map(ledger::targetName).toList()),
                Ledger.distinct(entries.stream().map(ledger::rigName).toList()),
                Ledger.distinct(entries.stream().map(ledger::siteName).toList()),
                Ledger.distinct(entries.stream()
                        .flatMap(e -> e.secondsByFilter().keySet().stream())
                        .toList()));
    }

    /** What is wrong with the notes, then with the entries' frames; the same thing once. */
    private List<Problem> problems() {
        List<Problem> all = new ArrayList<>(ledger.content().journal().problems());
        ledger.content().entries().forEach(sheet -> all.addAll(sheet.problems()));
        return Stream.concat(all.stream().filter(Problem::isFault), all.stream().filter(problem -> !problem.isFault()))
                .distinct()
                .toList();
    }
}
