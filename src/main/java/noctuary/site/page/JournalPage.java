package noctuary.site.page;

import java.util.List;

/** The front page. */
public record JournalPage(
        Head head,
        List<Teaser> latest,
        List<Labelled> totals,
        Drawing hours,
        Drawing sharpness,
        List<ChangeMark> changes,
        Lessons lessons,
        Choices choices,
        List<EntryRow> entries,
        List<ProblemRow> problems) {
    public JournalPage {
        latest = List.copyOf(latest);
        totals = List.copyOf(totals);
        changes = List.copyOf(changes);
        entries = List.copyOf(entries);
        problems = List.copyOf(problems);
    }

    /** What the list can be narrowed to. */
    public record Choices(List<String> targets, List<String> rigs, List<String> sites, List<String> filters) {}

    /** Open lessons, and the ways to all and to the sheet. */
    public record Lessons(List<EntryPage.LessonRow> open, Link all, Link sheet) {
        public Lessons {
            open = List.copyOf(open);
        }
    }

    /** A dated change, marked on the sharpness chart. @param verdict empty where there is none */
    public record ChangeMark(String date, Link change, String verdict, String tone) {}
}
