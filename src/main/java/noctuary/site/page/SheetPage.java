package noctuary.site.page;

import java.util.List;

/**
 * One printed page to take outside.
 *
 * @param others the same for other targets
 * @param checks of the rig that are not in order, and what the nights say of it
 * @param plan of exposure, a sentence each
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
        List<String> checks,
        String refocus,
        List<String> plan) {
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
