package noctuary.site.page;

import java.util.List;

/** One rig. */
public record RigPage(
        Head head,
        String name,
        String use,
        Markup note,
        Drawing train,
        List<PartRow> parts,
        List<FactRow> facts,
        List<CheckRow> checks,
        DeskPart desk,
        List<StateRow> history,
        List<Labelled> payload,
        String payloadTotal,
        String mount,
        List<Labelled> cost,
        List<Labelled> costTotals,
        Drawing sharpness,
        List<EntryRow> results) {
    public RigPage {
        parts = List.copyOf(parts);
        facts = List.copyOf(facts);
        checks = List.copyOf(checks);
        history = List.copyOf(history);
        payload = List.copyOf(payload);
        cost = List.copyOf(cost);
        costTotals = List.copyOf(costTotals);
        results = List.copyOf(results);
    }

    public record PartRow(String name, String front, String length, String glass, String rear) {}

    /** @param level ok, warn or wrong */
    public record CheckRow(String id, String level, String text) {}

    /** @param what the parts that were new on that date */
    public record StateRow(String from, List<String> what, String backFocus) {
        public StateRow {
            what = List.copyOf(what);
        }
    }
}
