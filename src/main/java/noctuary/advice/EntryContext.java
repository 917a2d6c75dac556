package noctuary.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import noctuary.entry.Journal;
import noctuary.entry.Site;
import noctuary.entry.Typed;
import noctuary.fact.Quantity;
import noctuary.keep.Memo;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.FrameSheet;
import noctuary.measure.NoiseOverTime;
import noctuary.measure.RigSheet;

/**
 * An entry's sheet beside its rig as it was that night, and its site.
 *
 * @param rig absent when the entry names none
 * @param noise against time, of its own frames
 * @param traits what its files tell; none while they are read
 */
record EntryContext(
        EntrySheet sheet,
        Optional<RigSheet> rigSheet,
        Optional<RigSheet.State> rig,
        Optional<Site> site,
        Optional<NoiseOverTime> noise,
        EntryTraits traits) {

    static EntryContext of(EntrySheet sheet, Journal journal, Map<String, RigSheet> rigs) {
        return of(sheet, journal, rigs, Optional.empty(), Memo.NONE);
    }

    static EntryContext of(
            EntrySheet sheet, Journal journal, Map<String, RigSheet> rigs, Optional<NoiseOverTime> noise, Memo memo) {
        Optional<RigSheet> rig = sheet.entry().rig().map(Typed::value).map(rigs::get);
        LocalDate night = sheet.night().value().orElse(LocalDate.MAX);
        EntryContext bare = new EntryContext(
                sheet,
                rig,
                rig.map(r -> on(r, night)),
                sheet.entry().site().map(Typed::value).map(journal.sites()::get),
                noise,
                EntryTraits.NONE);
        return new EntryContext(sheet, bare.rigSheet(), bare.rig(), bare.site(), noise, EntryTraits.of(bare, memo));
    }

    private static RigSheet.State on(RigSheet rig, LocalDate night) {
        return rig.states().stream()
                .filter(state -> !state.from().isAfter(night))
                .reduce((first, last) -> last)
                .orElse(rig.states().get(0));
    }

    String slug() {
        return sheet.entry().slug();
    }

    String rigId() {
        return sheet.entry().rig().map(Typed::value).orElse("");
    }

    String siteId() {
        return sheet.entry().site().map(Typed::value).orElse("");
    }

    Set<String> filters() {
        return sheet.secondsByFilter().keySet();
    }

    /** Frames that count as exposure. */
    List<FrameSheet> lights() {
        return sheet.frames().stream().filter(FrameSheet::counted).toList();
    }

    /** Whether both were made with the same rig on different nights. */
    boolean sameRigOtherNight(EntryContext other) {
        return rigId().equals(other.rigId())
                && !slug().equals(other.slug())
                && !sheet.night().value().equals(other.sheet.night().value());
    }

    OptionalDouble number(Figure figure) {
        return sheet.number(figure).map(q -> OptionalDouble.of(q.value())).orElseGet(OptionalDouble::empty);
    }

    /** A number of the rig's camera. */
    OptionalDouble camera(String key) {
        return rigSheet.map(r -> r.note().camera().get(key))
                .map(Typed::value)
                .map(Quantity::value)
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }
}
