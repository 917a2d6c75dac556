package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import noctuary.advice.ExposurePlan;
import noctuary.advice.Finding;
import noctuary.advice.LessonState;
import noctuary.advice.RefocusRule;
import noctuary.advice.RigDesk;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.RigSheet;
import noctuary.measure.TargetSheet;
import noctuary.rig.Check;
import noctuary.site.page.Advised;
import noctuary.site.page.Link;
import noctuary.site.page.SheetPage;

/** The sheet for the next night: one for the newest target, and one for each. */
final class SheetPages {
    /** What fits on one page beside the rest. */
    private static final int MOST_LESSONS = 9;

    private static final int MOST_BACK = 3;

    private final Ledger ledger;
    private final Heads heads;

    SheetPages(Ledger ledger, Heads heads) {
        this.ledger = ledger;
        this.heads = heads;
    }

    /** The target of the newest entry; none in a journal without entries. */
    Optional<TargetSheet> newest() {
        return ledger.content().entries().stream()
                .flatMap(sheet -> ledger.target(sheet).stream())
                .findFirst();
    }

    SheetPage page(Address here, Optional<TargetSheet> target) {
        Optional<EntrySheet> last = target.flatMap(this::last)
                .or(() -> ledger.content().entries().stream().findFirst());
        Optional<RigSheet> rig = ledger.content().entries().stream()
                .flatMap(sheet -> ledger.rig(sheet).stream())
                .findFirst();
        List<LessonState> open =
                ledger.advice().lessons().stream().filter(LessonState::open).toList();
        List<SheetPage.LessonRow> back = ledger.advice().lessons().stream()
                .filter(LessonState::returned)
                .limit(MOST_BACK)
                .map(SheetPages::lesson)
                .toList();
        String name = target.map(TargetSheet::name).orElse("");
        return new SheetPage(
                heads.of(
                        here,
                        "Sheet for the next night" + (name.isEmpty() ? "" : ", " + name),
                        "Open lessons, checks, focus and exposure for the next night, on one page."),
                target.map(t -> Link.of(t.name(), here.to(Address.target(t.id()))))
                        .orElse(Link.plain("")),
                rig.map(r -> Link.of(
                                r.note().name().value(),
                                here.to(Address.rig(r.note().id()))))
                        .orElse(Link.plain("")),
                ledger.content().entries().stream()
                        .findFirst()
                        .map(ledger::siteName)
                        .orElse(""),
                others(here),
                open.stream().limit(MOST_LESSONS).map(SheetPages::lesson).toList(),
                Math.max(0, open.size() - MOST_LESSONS),
                back,
                rig.map(SheetPages::fits).orElse(""),
                rig.map(this::checks).orElse(List.of()),
                rig.map(this::refocus).orElse(""),
                last.map(sheet -> plan(target, sheet, rig)).orElse(List.of()),
                last.flatMap(this::experiment).orElse(null));
    }

    private static SheetPage.LessonRow lesson(LessonState lesson) {
        int again = lesson.seenAgain().size();
        return new SheetPage.LessonRow(
                lesson.about(),
                lesson.todo(),
                again == 0 ? "" : "seen again " + Numerals.count(again, "time", "times"));
    }

    private List<Link> others(Address here) {
        return ledger.targets().stream()
                .map(t -> Link.of(t.name(), here.to(Address.sheet(t.id()))))
                .toList();
    }

    private Optional<EntrySheet> last(TargetSheet target) {
        List<EntrySheet> attempts = ledger.entries(
                target.attempts().stream().map(TargetSheet.Attempt::slug).toList());
        return attempts.stream().reduce((first, last) -> last);
    }

    private static String fits(RigSheet rig) {
        var figures = rig.latest().figures();
        List<String> parts = new ArrayList<>();
        if (figures.backFocusActualMm().isPresent()
                && figures.backFocusRequiredMm().isPresent()) {
            parts.add(Numerals.fixed(figures.backFocusActualMm(), 2) + "\u00a0mm from corrector to sensor, "
                    + Numerals.fixed(figures.backFocusRequiredMm(), 2) + "\u00a0mm wanted");
        }
        if (figures.payloadKg().isPresent()) {
            String rated = rig.note()
                    .mountCapacity()
                    .map(c -> " of " + Numerals.trimmed(c.value().value(), 1))
                    .orElse("");
            parts.add(Numerals.trimmed(figures.payloadKg().getAsDouble(), 1) + rated + "\u00a0kg on the mount");
        }
        return String.join("; ", parts);
    }

    private Optional<Advised.FindingRow> experiment(EntrySheet last) {
        List<Finding> findings = ledger.advice().findings(last.entry().slug());
        return new AdvisedParts(ledger)
                .findings(findings).stream().filter(f -> !f.settle().isEmpty()).findFirst();
    }

    private List<String> checks(RigSheet rig) {
        List<String> texts = new ArrayList<>();
        rig.latest().checks().stream()
                .filter(check -> check.level() != Check.Level.OK)
                .forEach(check -> texts.add(ledger.discretion().text(check.text())));
        RigDesk desk = ledger.advice().desks().get(rig.note().id());
        if (desk != null) {
            desk.findings().stream()
                    .filter(f -> f.id().equals("desk-focal-length"))
                    .map(Finding::text)
                    .forEach(texts::add);
        }
        return texts;
    }

    private String refocus(RigSheet rig) {
        RefocusRule rule = ledger.advice().refocus().get(rig.note().id());
        return rule == null ? "" : rule.sentence();
    }

    private List<String> plan(Optional<TargetSheet> target, EntrySheet last, Optional<RigSheet> rig) {
        List<String> plan = new ArrayList<>();
        target.ifPresent(t -> plan.add(soFar(t)));
        ExposurePlan own = ledger.advice().plans().get(last.entry().slug());
        if (own != null) {
            own.deeper().stream()
                    .filter(d -> d.magnitudes() == 0.5)
                    .map(d -> AdvisedParts.deeper(own, d))
                    .forEach(d -> plan.add(wanted(d, last)));
        }
        measured(last, rig).ifPresent(sheet -> plan.add(sub(sheet, last)));
        return plan;
    }

    private String soFar(TargetSheet target) {
        List<EntrySheet> attempts = ledger.entries(
                target.attempts().stream().map(TargetSheet.Attempt::slug).toList());
        double seconds = attempts.stream()
                .mapToDouble(s -> s.number(Figure.EXPOSURE).map(q -> q.value()).orElse(0.0))
                .sum();
        return Numerals.duration(seconds) + " so far in " + Numerals.count(attempts.size(), "attempt", "attempts")
                + ".";
    }

    private static String wanted(Advised.DeeperRow row, EntrySheet last) {
        String night =
                last.night().map(date -> " than on " + Dates.reading(date)).orElse("");
        return row.more().isEmpty()
                ? "Half a magnitude more" + night + " is out of reach until the calibration is mended."
                : "Half a magnitude deeper" + night + ": " + row.total() + " under the same sky.";
    }

    /** The entry itself where its single exposures were measured, else the newest of the rig that was. */
    private Optional<EntrySheet> measured(EntrySheet last, Optional<RigSheet> rig) {
        return Stream.concat(
                        Stream.of(last),
                        ledger.content().entries().stream()
                                .filter(sheet -> ledger.rig(sheet).equals(rig)))
                .filter(sheet -> plan(sheet).flatMap(ExposurePlan::sub).isPresent())
                .findFirst();
    }

    private String sub(EntrySheet sheet, EntrySheet last) {
        String sentence = plan(sheet).flatMap(ExposurePlan::sub).orElseThrow().sentence();
        String where =
                ledger.targetName(sheet) + sheet.night().map(n -> ", " + n).orElse("");
        return sheet.equals(last) ? sentence : "As measured on " + where + ": " + sentence;
    }

    private Optional<ExposurePlan> plan(EntrySheet sheet) {
        return Optional.ofNullable(ledger.advice().plans().get(sheet.entry().slug()));
    }
}
