package noctuary.site.page;

import java.util.List;

/** Every change, newest first. */
public record ChangesPage(Head head, List<Row> changes) {
    public ChangesPage {
        changes = List.copyOf(changes);
    }

    /**
     * @param date ISO, or empty
     * @param verdict in words; empty for a choice
     * @param tone good, bad or open
     * @param counts nights on either side
     */
    public record Row(
            Link change,
            String date,
            String reading,
            String kind,
            String verdict,
            String tone,
            String decides,
            String why,
            String counts) {}
}
