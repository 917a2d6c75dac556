package noctuary.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import noctuary.entry.Entry;
import noctuary.entry.Journal;
import noctuary.entry.Typed;
import noctuary.keep.Memo;
import noctuary.measure.EntrySheet;
import noctuary.measure.RigSheet;
import noctuary.measure.VersionSheet;
import noctuary.review.Chronicle.Sides;

/** Reviews the changes of a journal, and any two rigs or sites. */
public final class Reviews {
    private final Chronicle chronicle;
    private final List<Timeless> timeless;
    private final List<Change> changes;
    private final Function<EntrySheet, List<VersionSheet>> versions;
    private final Memo memo;

    private Reviews(
            Chronicle chronicle,
            List<EntrySheet> entries,
            Function<EntrySheet, List<VersionSheet>> versions,
            Memo memo) {
        this.memo = memo;
        this.chronicle = chronicle;
        this.versions = versions;
        this.timeless =
                entries.stream().flatMap(sheet -> Timeless.of(sheet).stream()).toList();
        this.changes = Changes.of(chronicle);
    }

    /** @param versions of an entry, measured; asked for only where a choice is reviewed */
    public static Reviews of(
            Journal journal,
            List<EntrySheet> entries,
            Map<String, RigSheet> rigs,
            Function<EntrySheet, List<VersionSheet>> versions) {
        return of(journal, entries, rigs, versions, Memo.NONE);
    }

    /** @param memo keeps what takes long to work out */
    public static Reviews of(
            Journal journal,
            List<EntrySheet> entries,
            Map<String, RigSheet> rigs,
            Function<EntrySheet, List<VersionSheet>> versions,
            Memo memo) {
        return new Reviews(Chronicle.of(journal, entries, rigs, memo), entries, versions, memo);
    }

    /** Ids of the changes, by date. */
    public List<String> ids() {
        return changes.stream().map(Change::id).toList();
    }

    /** Every change of the journal, by date. */
    public List<Review> all() {
        return changes.parallelStream().map(this::review).toList();
    }

    /** Around one change; empty when there is none of that id. */
    public Optional<Review> around(String id) {
        return changes.stream().filter(c -> c.id().equals(id)).findFirst().map(this::review);
    }

    /** All nights with one rig against all with another, at the sites they share when they share any. */
    public Review rigs(String before, String after) {
        Sides sides = Chronicle.alike(chronicle.ofRig(before), chronicle.ofRig(after), EntryNight::site);
        return review(new Change(
                "rig-" + before + "-" + after,
                ChangeKind.RIG,
                divide(sides),
                chronicle.rigName(after) + " against " + chronicle.rigName(before),
                Optional.empty(),
                new Side(before, chronicle.rigName(before), sides.before()),
                new Side(after, chronicle.rigName(after), sides.after()),
                List.of()));
    }

    /** All nights at one site against all at another, with the rigs they share when they share any. */
    public Review sites(String before, String after) {
        SiteChanges moves = new SiteChanges(chronicle);
        Sides sides = moves.sides(before, after);
        return review(moves.between("site-" + before + "-" + after, divide(sides), before, after, sides));
    }

    /** The first night after, when every night before lies before it. */
    private static Optional<LocalDate> divide(Sides sides) {
        if (sides.before().isEmpty() || sides.after().isEmpty()) {
            return Optional.empty();
        }
        LocalDate last = sides.before().get(sides.before().size() - 1).night();
        return Optional.of(sides.after().get(0).night()).filter(first -> first.isAfter(last));
    }

    private Review review(Change change) {
        boolean choice = change.kind() == ChangeKind.CHOICE;
        List<DepthPair> pairs = choice ? List.of() : Depths.of(change, memo);
        String key = choice ? "" : KeptReview.key(change);
        KeptReview kept = KeptReview.find(key, memo).orElseGet(() -> {
            KeptReview worked = worked(change, pairs);
            worked.keep(key, memo);
            return worked;
        });
        return new Review(
                key,
                change,
                kept.measures(),
                kept.absent(),
                leftOut(change),
                kept.circumstances(),
                kept.losses(),
                Coincidences.of(chronicle, change, changes),
                pairs,
                kept.foretold(),
                kept.test());
    }

    private KeptReview worked(Change change, List<DepthPair> pairs) {
        Evidence evidence =
                change.kind() == ChangeKind.CHOICE ? ChoiceEvidence.of(change, versions) : Evidence.of(change, pairs);
        Set<Influence> changed = change.kind().changes();
        String verdicts = Judged.key(changed, evidence.measures());
        List<MeasureReview> measures = Judged.of(verdicts, change.id(), changed, evidence.measures(), memo);
        return new KeptReview(
                verdicts,
                measures,
                evidence.absent(),
                Circumstance.of(change),
                Loss.of(change),
                Foretelling.of(change, pairs, evidence.measures()),
                measures.stream().filter(m -> m.nights().primary()).findFirst().flatMap(m -> FairTests.of(change, m)));
    }

    /** Entries with one of the rigs, at one of the sites, whose night is not known; and frames without a time. */
    private List<String> leftOut(Change change) {
        Predicate<Entry> belongs = change.kind() == ChangeKind.SITE
                ? e -> named(change, EntryNight::site, e.site().map(Typed::value))
                : e -> named(change, EntryNight::rig, e.rig().map(Typed::value));
        return timeless.stream()
                .filter(t -> belongs.test(t.entry()))
                .map(Timeless::said)
                .sorted()
                .toList();
    }

    private static boolean named(Change change, Function<EntryNight, String> key, Optional<String> id) {
        return id.isPresent()
                && Stream.of(change.before(), change.after())
                        .flatMap(side -> side.nights().stream())
                        .map(key)
                        .anyMatch(id.get()::equals);
    }
}
