package noctuary.site;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The shape of {@code data/journal.json}: component names are its keys, absent values are null. */
record JournalRecord(
        List<EntryRecord> entries,
        List<RigRecord> rigs,
        List<SiteRecord> sites,
        List<TargetRecord> targets,
        List<ChangeRecord> changes,
        List<LessonRecord> lessons) {

    record EntryRecord(
            String slug,
            String title,
            String target,
            String night,
            List<String> nights,
            String rig,
            String site,
            OptionalDouble exposureSeconds,
            Map<String, Double> exposureByFilter,
            int frames,
            OptionalDouble imageScaleArcsecPerPx,
            String imageScaleFrom,
            OptionalDouble fwhmArcsec,
            OptionalDouble fwhmPx,
            OptionalDouble ellipticity,
            OptionalDouble backgroundLevel,
            OptionalDouble backgroundNoise,
            List<FindingRecord> findings,
            List<ProblemRecord> problems,
            List<VersionRecord> versions) {}

    record FindingRecord(String id, String text, String evidence) {}

    record ProblemRecord(String where, String what, String hint) {}

    record VersionRecord(
            String name,
            String from,
            List<String> steps,
            OptionalDouble noiseRatio,
            OptionalDouble fwhmRatio,
            OptionalDouble starsKept,
            OptionalDouble starsLost,
            OptionalDouble starsInvented,
            OptionalDouble clippedBlackPercent,
            OptionalDouble clippedWhitePercent) {}

    record RigRecord(
            String id,
            String name,
            OptionalDouble imageScaleArcsecPerPx,
            OptionalDouble focalRatio,
            BackFocus backFocusMm,
            MountLoad mountLoad,
            Map<String, BigDecimal> cost,
            List<CheckRecord> checks) {}

    record BackFocus(OptionalDouble required, OptionalDouble actual) {}

    record MountLoad(OptionalDouble massKg, OptionalDouble capacityKg) {}

    record CheckRecord(String id, String level, String text) {}

    /** Coordinates are null unless the settings publish them, and then rounded. */
    record SiteRecord(
            String id,
            String name,
            OptionalDouble latitudeDeg,
            OptionalDouble longitudeDeg,
            OptionalDouble elevationM) {}

    record TargetRecord(String name, String reference, List<AttemptRecord> attempts) {}

    record AttemptRecord(
            String slug,
            int matched,
            OptionalDouble rmsPx,
            OptionalDouble scale,
            OptionalDouble rotationDeg,
            boolean mirrored) {}

    /**
     * @param before id of the rig or site, else in words
     * @param after as before
     */
    record ChangeRecord(
            String id, String kind, String date, String before, String after, List<MeasureRecord> measures) {}

    /** Shift is after less before, low and high its interval. */
    record MeasureRecord(
            String name,
            String unit,
            int nightsBefore,
            int nightsAfter,
            OptionalDouble before,
            OptionalDouble after,
            OptionalDouble shift,
            OptionalDouble low,
            OptionalDouble high,
            OptionalDouble p,
            String verdict,
            String why) {}

    /** @param closedBy slug of the entry that closed it, or null while open */
    record LessonRecord(
            String id,
            String about,
            @JsonProperty("do") String todo,
            String openedBy,
            String closedBy,
            List<String> seenAgain) {}
}
