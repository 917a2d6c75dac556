package noctuary.site.page;

import java.util.List;

/**
 * One printed page to take outside.
 *
 * @param others the same for other targets
 * @param checks of the rig that are not in order, and what the nights say of it
 * @param fits distance and load in one line; empty where the note tells neither
 * @param plan of exposure, a sentence each
 * @param experiment what limited the last entry on the target, and what would settle it; null where nothing did
 * @param more open lessons that found no room
 * @param back closed lessons whose trouble has returned since
 */
public record SheetPage(
        Head head,
        Link target,
        Link rig,
        String site,
        List<Link> others,
        List<LessonRow> lessons,
        int more,
        List<LessonRow> back,
        String fits,
        List<String> checks,
        String refocus,
        List<String> plan,
        Advised.FindingRow experiment) {
    public SheetPage {
        others = List.copyOf(others);
        lessons = List.copyOf(lessons);
        back = List.copyOf(back);
        checks = List.copyOf(checks);
        plan = List.copyOf(plan);
    }

    /** @param again how often the trouble returned */
    public record LessonRow(String about, String todo, String again) {}
}
