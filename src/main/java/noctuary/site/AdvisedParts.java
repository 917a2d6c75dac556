package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.advice.Budget;
import noctuary.advice.ExposurePlan;
import noctuary.advice.Finding;
import noctuary.advice.LimitReport;
import noctuary.advice.NoiseFall;
import noctuary.advice.NoiseGrowth;
import noctuary.advice.Term;
import noctuary.draw.NoiseByTime;
import noctuary.entry.Site;
import noctuary.measure.EntrySheet;
import noctuary.measure.NoiseOverTime;
import noctuary.measure.RigSheet;
import noctuary.site.page.Advised;
import noctuary.site.page.Drawing;

/** Advice on one entry as printed. */
final class AdvisedParts {
    private final Ledger ledger;

    AdvisedParts(Ledger ledger) {
        this.ledger = ledger;
    }

    Advised of(EntrySheet sheet) {
        String slug = sheet.entry().slug();
        LimitReport report = ledger.advice().limits().get(slug);
        List<Advised.BudgetPart> budgets = new ArrayList<>();
        report.sharpness().ifPresent(b -> budgets.add(budget("Star width, as the pixels show it", b)));
        report.depth().ifPresent(b -> budgets.add(budget("Noise of a pixel in one exposure", b)));
        return new Advised(
                findings(report.findings()),
                budgets,
                report.sharpness().isPresent() && report.depth().isEmpty() ? report.whyNoDepth() : "",
                Optional.ofNullable(ledger.advice().plans().get(slug))
                        .map(this::wanted)
                        .orElse(null));
    }

    List<Advised.FindingRow> findings(List<Finding> findings) {
        return findings.stream().map(this::finding).toList();
    }

    private Advised.FindingRow finding(Finding f) {
        Discretion discretion = ledger.discretion();
        return new Advised.FindingRow(
                f.id(), discretion.text(f.text()), discretion.text(f.settle()), discretion.text(f.evidence()));
    }

    private static Advised.BudgetPart budget(String title, Budget budget) {
        return new Advised.BudgetPart(
                title,
                amount(budget.total(), budget.unit()),
                budget.terms().stream().map(t -> term(budget, t)).toList());
    }

    private static Advised.TermRow term(Budget budget, Term term) {
        String amount = term.amount().isPresent() ? amount(term.amount().getAsDouble(), budget.unit()) : "";
        int share = (int) Math.round(100 * Math.min(1, budget.share(term).orElse(0)));
        return new Advised.TermRow(term.label(), amount, share, term.how());
    }

    private static String amount(double value, String unit) {
        return Numerals.fixed(value, unit.equals("e") ? 1 : 2) + '\u00a0' + unit;
    }

    private Advised.Wanted wanted(ExposurePlan plan) {
        return new Advised.Wanted(
                Numerals.duration(plan.totalSeconds()),
                plan.sub().map(ExposurePlan.Sub::sentence).orElse(""),
                plan.sub().map(ExposurePlan.Sub::evidence).orElse(""),
                plan.growth().map(NoiseGrowth::sentence).orElse(""),
                plan.fall().map(NoiseFall::sentence).orElse(""),
                plan.fall().map(AdvisedParts::falling).orElse(List.of()),
                plan.fall().map(AdvisedParts::chart).orElse(null),
                plan.deeper().stream().map(d -> deeper(plan, d)).toList(),
                plan.elsewhere().stream().map(this::place).toList(),
                chosen(plan.elsewhere().size(), plan.places()));
    }

    private static List<Advised.FallRow> falling(NoiseFall fall) {
        NoiseOverTime.Point first = fall.course().points().get(0);
        return fall.course().points().stream()
                .map(p -> new Advised.FallRow(
                        "" + p.frames(),
                        Numerals.duration(p.seconds()),
                        Numerals.fixed(p.noise(), 2),
                        Numerals.fixed(p.fresh(), 2),
                        Numerals.fixed(first.fresh() * Math.sqrt((double) first.frames() / p.frames()), 2)))
                .toList();
    }

    private static Drawing chart(NoiseFall fall) {
        List<NoiseByTime.Point> points = fall.course().points().stream()
                .map(p -> new NoiseByTime.Point(p.seconds(), p.noise(), p.fresh()))
                .toList();
        return Charts.drawing(
                new NoiseByTime("Noise against time", "noise of a pixel, counts of the first frame", points),
                "noise-by-time",
                "Noise against time: what averages out follows the line.");
    }

    static Advised.DeeperRow deeper(ExposurePlan plan, ExposurePlan.Deeper row) {
        boolean reached = row.totalSeconds().isPresent();
        return new Advised.DeeperRow(
                Numerals.trimmed(row.magnitudes(), 2) + "\u00a0mag",
                reached ? Numerals.duration(row.totalSeconds().getAsDouble()) : "",
                reached ? Numerals.duration(row.totalSeconds().getAsDouble() - plan.totalSeconds()) : "");
    }

    private static String chosen(int told, int places) {
        return told == places ? "" : "the " + told + " of " + places + " that take least";
    }

    private Advised.PlaceRow place(ExposurePlan.Elsewhere e) {
        RigSheet rig = ledger.content().rigs().get(e.rig());
        Site site = ledger.content().journal().sites().get(e.site());
        return new Advised.PlaceRow(
                rig == null ? "rig not told" : rig.note().name().value(),
                site == null ? "site not told" : site.name(),
                Numerals.duration(Math.rint(e.seconds())),
                e.assuming());
    }
}
