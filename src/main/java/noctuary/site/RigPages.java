package noctuary.site;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import noctuary.entry.RigNote;
import noctuary.measure.EntrySheet;
import noctuary.measure.RigSheet;
import noctuary.rig.Check;
import noctuary.rig.RigFigures;
import noctuary.site.page.Labelled;
import noctuary.site.page.Link;
import noctuary.site.page.RigPage;
import noctuary.site.page.RigsPage;

/** The list of rigs and one page a rig. */
final class RigPages {
    private final Ledger ledger;
    private final Heads heads;
    private final Charts charts;

    RigPages(Ledger ledger, Heads heads, Charts charts) {
        this.ledger = ledger;
        this.heads = heads;
        this.charts = charts;
    }

    RigsPage index() {
        List<RigsPage.Row> rows =
                ledger.content().rigs().values().stream().map(this::row).toList();
        return new RigsPage(heads.of(Address.RIGS, "Rigs", "Every rig: train, arithmetic, checks and results."), rows);
    }

    private RigsPage.Row row(RigSheet rig) {
        long warnings = rig.latest().checks().stream()
                .filter(check -> check.level() != Check.Level.OK)
                .count();
        return new RigsPage.Row(
                Link.of(
                        rig.note().name().value(),
                        Address.RIGS.to(Address.rig(rig.note().id()))),
                use(rig.note()),
                glance(rig.latest().figures()),
                rig.slugs().size(),
                (int) warnings);
    }

    RigPage page(RigSheet rig) {
        RigNote note = rig.note();
        Address here = Address.rig(note.id());
        RigSheet.State latest = rig.latest();
        Facts facts = new Facts(here, ledger.discretion());
        List<EntrySheet> results = ledger.entries(rig.slugs());
        RigParts parts = new RigParts(rig);
        return new RigPage(
                heads.of(here, note.name().value(), note.name().value() + ": train, arithmetic, checks and results."),
                note.name().value(),
                use(note),
                NoteBody.under(2, note.html(), ledger.unshown(here)),
                new TrainChart(latest).drawing(),
                parts.train(),
                latest.facts().stream()
                        .map(fact -> facts.quantity(fact.id(), fact.label(), fact.fact()))
                        .toList(),
                latest.checks().stream().map(this::check).toList(),
                new DeskParts(ledger, here, rig).part(),
                parts.history(),
                parts.payload(),
                parts.payloadTotal(),
                parts.mount(),
                parts.cost(),
                parts.costTotals(),
                results.isEmpty() ? null : charts.sharpness(here, results, ChangeMarks.of(ledger.content(), rig)),
                new Rows(ledger, here).rows(results));
    }

    private RigPage.CheckRow check(Check check) {
        String level = check.level().name().toLowerCase(Locale.ROOT);
        return new RigPage.CheckRow(check.id(), level, ledger.discretion().text(check.text()));
    }

    static String use(RigNote note) {
        String from = note.from().map(LocalDate::toString).orElse("");
        String to = note.to().map(LocalDate::toString).orElse("");
        if (from.isEmpty() && to.isEmpty()) {
            return "";
        }
        return to.isEmpty() ? "in use since " + from : "in use " + (from + " to " + to).strip();
    }

    private static List<Labelled> glance(RigFigures figures) {
        return Stream.of(
                        new Labelled("mm", Numerals.fixed(figures.effectiveFocalLengthMm(), 0)),
                        new Labelled("focal ratio", Numerals.fixed(figures.focalRatio(), 1)),
                        new Labelled("arcsec/px", Numerals.fixed(figures.imageScaleArcsecPerPx(), 2)))
                .filter(figure -> !figure.value().isEmpty())
                .toList();
    }
}
