package noctuary.site.page;

import java.util.List;

/**
 * One entry. @param hero null without a picture; {@code stars}, {@code course}, {@code older}, {@code newer} likewise
 */
public record EntryPage(
        Head head,
        String title,
        Link target,
        List<NightOf> nights,
        Link rig,
        String site,
        Plate hero,
        String heroCaption,
        Markup note,
        List<Labelled> glance,
        Advised advised,
        List<FactGroup> facts,
        List<FilterRow> filters,
        Stars stars,
        List<SkyRow> skies,
        Drawing course,
        List<ObservationRow> observations,
        List<String> drifts,
        List<PlaneRow> planes,
        List<FrameRow> frames,
        List<VersionPart> versions,
        List<LostRow> lost,
        List<Link> changes,
        List<LessonRow> lessons,
        List<ProblemRow> problems,
        Link older,
        Link newer) {
    public EntryPage {
        nights = List.copyOf(nights);
        glance = List.copyOf(glance);
        facts = List.copyOf(facts);
        filters = List.copyOf(filters);
        skies = List.copyOf(skies);
        observations = List.copyOf(observations);
        drifts = List.copyOf(drifts);
        planes = List.copyOf(planes);
        frames = List.copyOf(frames);
        versions = List.copyOf(versions);
        lost = List.copyOf(lost);
        changes = List.copyOf(changes);
        lessons = List.copyOf(lessons);
        problems = List.copyOf(problems);
    }

    /** The same page with the note's words, and ways to the entries before and after; null for none. */
    public EntryPage telling(Markup words, Link before, Link after) {
        return new EntryPage(
                head,
                title,
                target,
                nights,
                rig,
                site,
                hero,
                heroCaption,
                words,
                glance,
                advised,
                facts,
                filters,
                stars,
                skies,
                course,
                observations,
                drifts,
                planes,
                frames,
                versions,
                lost,
                changes,
                lessons,
                problems,
                before,
                after);
    }

    /** Facts that belong together. */
    public record FactGroup(String title, List<FactRow> rows) {
        public FactGroup {
            rows = List.copyOf(rows);
        }
    }

    public record NightOf(String iso, String text, String href) {}

    /** @param share of the longest filter, 0 to 100, for a bar */
    public record FilterRow(FactRow fact, int share) {}

    /** Star shapes: the measured picture with overlay (null when it is the hero), the map and its numbers. */
    public record Stars(Plate plate, Drawing shapes, Drawing map, List<ZoneRow> zones, String summary) {}

    public record ZoneRow(
            String where, int stars, String fwhm, String ellipticity, String angle, String background, String noise) {}

    /**
     * In the middle of a night's exposures; empty where not known.
     *
     * @param moonlight magnitudes by which the Moon brightens a natural sky at the target
     */
    public record SkyRow(
            String night, String airmass, String moonLit, String moon, String moonDistance, String moonlight) {}

    /** @param night such as {@code 18 October 2025}; empty when the entry has one night */
    public record ObservationRow(String night, String text, String evidence) {}

    /** One colour of a stack of three. */
    public record PlaneRow(String colour, String background, String noise, String fwhmPx) {}

    /** @param left why it adds no exposure, or empty */
    public record FrameRow(
            String name,
            String taken,
            String filter,
            String seconds,
            String fwhmPx,
            String fwhmArcsec,
            String ellipticity,
            String background,
            String stars,
            String left) {}

    /** @param effect null where nothing was compared */
    public record VersionPart(String name, String from, List<Step> steps, Plate plate, VersionEffect effect) {}

    public record Step(String choice, String setting) {}

    public record LostRow(String minutes, String cause, String note) {}

    public record LessonRow(String id, String about, String todo) {}
}
