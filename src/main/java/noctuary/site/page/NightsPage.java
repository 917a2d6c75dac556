package noctuary.site.page;

import java.util.List;

/** The calendar of nights. */
public record NightsPage(
        Head head,
        List<Labelled> totals,
        List<Cause> causes,
        TimePart time,
        List<Drawing> calendars,
        List<Month> months) {
    public NightsPage {
        totals = List.copyOf(totals);
        causes = List.copyOf(causes);
        calendars = List.copyOf(calendars);
        months = List.copyOf(months);
    }

    /** @param share of the largest cause, 0 to 100 */
    public record Cause(String cause, String time, int times, int share) {}

    /** @param weeks seven days each, Monday first; null days lie outside the month */
    public record Month(String id, String name, String hours, List<List<Day>> weeks, List<Night> nights) {
        public Month {
            nights = List.copyOf(nights);
        }
    }

    /** @param href to the night below, empty for a night without frames */
    public record Day(int day, String href, String hours) {}

    public record Night(String id, String date, String iso, String used, List<Use> uses, List<Lost> lost) {
        public Night {
            uses = List.copyOf(uses);
            lost = List.copyOf(lost);
        }
    }

    public record Use(Link entry, String hours, Link rig, String site) {}

    public record Lost(String time, String cause, String note) {}
}
