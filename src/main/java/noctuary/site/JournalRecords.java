package noctuary.site;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import noctuary.entry.Site;
import noctuary.measure.RigSheet;
import noctuary.measure.TargetSheet;
import noctuary.rig.RigFigures;
import noctuary.site.JournalRecord.AttemptRecord;
import noctuary.site.JournalRecord.BackFocus;
import noctuary.site.JournalRecord.CheckRecord;
import noctuary.site.JournalRecord.LessonRecord;
import noctuary.site.JournalRecord.MountLoad;
import noctuary.site.JournalRecord.RigRecord;
import noctuary.site.JournalRecord.SiteRecord;
import noctuary.site.JournalRecord.TargetRecord;

/** The whole journal as it stands in {@code data/journal.json}. */
final class JournalRecords {
    /** Some 11 km from north to south: a town, not a garden. */
    private static final BigDecimal COORDINATE_STEP_DEG = new BigDecimal("0.1");

    private static final BigDecimal ELEVATION_STEP_M = new BigDecimal("100");

    private final Ledger ledger;
    private final SiteContent content;

    JournalRecords(Ledger ledger) {
        this.ledger = ledger;
        this.content = ledger.content();
    }

    JournalRecord journal() {
        EntryRecords entries = new EntryRecords(ledger);
        return new JournalRecord(
                content.entries().stream().map(entries::of).toList(),
                content.rigs().values().stream().map(this::rig).toList(),
                content.journal().sites().values().stream().map(this::site).toList(),
                content.targets().stream().map(JournalRecords::target).toList(),
                content.reviews().stream().map(ChangeRecords::of).toList(),
                lessons());
    }

    private RigRecord rig(RigSheet rig) {
        RigFigures figures = rig.latest().figures();
        OptionalDouble capacity = rig.note()
                .mountCapacity()
                .map(typed -> OptionalDouble.of(typed.value().value()))
                .orElse(OptionalDouble.empty());
        return new RigRecord(
                rig.note().id(),
                rig.note().name().value(),
                figures.imageScaleArcsecPerPx(),
                figures.focalRatio(),
                new BackFocus(figures.backFocusRequiredMm(), figures.backFocusActualMm()),
                new MountLoad(figures.payloadKg(), capacity),
                rig.note().cost().isEmpty() ? null : RigParts.totals(rig.note()),
                rig.latest().checks().stream()
                        .map(check -> new CheckRecord(
                                check.id(),
                                check.level().name().toLowerCase(Locale.ROOT),
                                ledger.discretion().text(check.text())))
                        .toList());
    }

    private SiteRecord site(Site site) {
        boolean told = content.journal().settings().publish().coordinates();
        OptionalDouble absent = OptionalDouble.empty();
        return new SiteRecord(
                site.id(),
                site.name(),
                told ? rounded(site.latitudeDeg(), COORDINATE_STEP_DEG) : absent,
                told ? rounded(site.longitudeDeg(), COORDINATE_STEP_DEG) : absent,
                told ? rounded(site.elevationM(), ELEVATION_STEP_M) : absent);
    }

    /** To the nearest step, as the nearest decimal number. */
    private static OptionalDouble rounded(OptionalDouble value, BigDecimal step) {
        return value.isEmpty()
                ? value
                : OptionalDouble.of(BigDecimal.valueOf(value.getAsDouble())
                        .divide(step, 0, RoundingMode.HALF_EVEN)
                        .multiply(step)
                        .doubleValue());
    }

    private static TargetRecord target(TargetSheet target) {
        return new TargetRecord(
                target.name(),
                target.reference(),
                target.attempts().stream()
                        .map(a -> new AttemptRecord(
                                a.slug(), a.matched(), a.rmsPx(), a.scale(), a.rotationDeg(), a.mirrored()))
                        .toList());
    }

    private List<LessonRecord> lessons() {
        return ledger.advice().lessons().stream()
                .map(l -> new LessonRecord(
                        l.id(), l.about(), l.todo(), l.openedBy(), l.closedBy().orElse(null), l.seenAgain()))
                .toList();
    }
}
