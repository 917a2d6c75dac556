package noctuary.site;

import java.time.LocalDate;
import java.util.List;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.TargetSheet;
import noctuary.site.page.Link;
import noctuary.site.page.Plate;
import noctuary.site.page.SkyPart;
import noctuary.site.page.TargetPage;
import noctuary.site.page.TargetsPage;
import noctuary.sky.Catalogue;

/** The list of targets and one page a target. */
final class TargetPages {
    private final Ledger ledger;
    private final Heads heads;
    private final Charts charts;

    TargetPages(Ledger ledger, Heads heads, Charts charts) {
        this.ledger = ledger;
        this.heads = heads;
        this.charts = charts;
    }

    TargetsPage index() {
        Address here = Address.TARGETS;
        List<TargetsPage.Row> rows =
                ledger.targets().stream().map(t -> row(here, t)).toList();
        return new TargetsPage(
                heads.of(here, "Targets", "Every object in the journal, with its attempts and hours."), rows);
    }

    private TargetsPage.Row row(Address here, TargetSheet target) {
        List<EntrySheet> attempts = attempts(target);
        Plates plates = new Plates(ledger, here);
        Plate plate = attempts.stream()
                .map(plates::ofFace)
                .filter(p -> p != null)
                .reduce((first, last) -> last)
                .orElse(null);
        return new TargetsPage.Row(
                Link.of(target.name(), here.to(Address.target(target.id()))),
                Numerals.count(attempts.size(), "attempt", "attempts"),
                seconds(attempts) > 0 ? Numerals.duration(seconds(attempts)) : "",
                span(attempts),
                plate);
    }

    TargetPage page(TargetSheet target) {
        Address here = Address.target(target.id());
        List<EntrySheet> attempts = attempts(target);
        String summary = Numerals.count(attempts.size(), "attempt", "attempts") + ", "
                + (seconds(attempts) > 0 ? Numerals.duration(seconds(attempts)) + " in all" : "exposure not known")
                + spanPhrase(attempts) + ".";
        Alignments alignments = new Alignments(ledger, here, target);
        SkyPart sky = SkyParts.of(ledger, here, target);
        return new TargetPage(
                heads.of(here, target.name(), target.name() + ": " + summary),
                target.name(),
                summary,
                attempts.size() > 1 ? charts.growth(here, attempts) : null,
                Catalogue.find(target.name()).map(new Frames(ledger)::around).orElse(null),
                Link.of("Sheet for the next night on it", here.to(Address.sheet(target.id()))),
                sky == null || sky.views().isEmpty() ? alignments.patch() : "",
                sky,
                target.attempts().stream()
                        .flatMap(attempt -> ledger.entry(attempt.slug()).stream()
                                .map(sheet -> attempt(alignments, here, attempt, sheet, sky)))
                        .toList());
    }

    private TargetPage.Attempt attempt(
            Alignments alignments, Address here, TargetSheet.Attempt attempt, EntrySheet sheet, SkyPart sky) {
        SkyPart.Shown shown = sky == null
                ? null
                : sky.views().stream()
                        .filter(view -> view.slug().equals(attempt.slug()))
                        .map(SkyPart.View::alike)
                        .findFirst()
                        .orElse(null);
        return new TargetPage.Attempt(
                new Rows(ledger, here).row(sheet),
                alignments.isReference(attempt),
                shown,
                shown == null ? alignments.view(attempt, sheet) : null,
                sheet.number(Figure.EXPOSURE).map(Numerals::of).orElse(""),
                alignments.laid(attempt, sheet));
    }

    private List<EntrySheet> attempts(TargetSheet target) {
        return ledger.entries(
                target.attempts().stream().map(TargetSheet.Attempt::slug).toList());
    }

    private static double seconds(List<EntrySheet> attempts) {
        return attempts.stream()
                .flatMap(sheet -> sheet.number(Figure.EXPOSURE).stream())
                .mapToDouble(q -> q.value())
                .sum();
    }

    private static String span(List<EntrySheet> attempts) {
        List<LocalDate> nights = attempts.stream()
                .flatMap(s -> s.night().value().stream())
                .sorted()
                .distinct()
                .toList();
        if (nights.isEmpty()) {
            return "";
        }
        String first = Dates.reading(nights.get(0));
        return nights.size() == 1 ? first : first + " to " + Dates.reading(nights.get(nights.size() - 1));
    }

    private static String spanPhrase(List<EntrySheet> attempts) {
        String span = span(attempts);
        return span.isEmpty() ? "" : (span.contains(" to ") ? ", " : ", on ") + span;
    }
}
