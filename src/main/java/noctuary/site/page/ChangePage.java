package noctuary.site.page;

import java.util.List;

/**
 * One change reviewed.
 *
 * @param decides the measure that the verdict is of; empty when none could be named
 * @param words what the keeper's note says of it
 * @param overview every measure's shift with its interval; null when none has one
 * @param losses empty without lost time on either side
 * @param test null when nothing is open
 */
public record ChangePage(
        Head head,
        String title,
        String kind,
        String date,
        String reading,
        String verdict,
        String tone,
        String decides,
        String why,
        List<String> words,
        SidePart before,
        SidePart after,
        List<String> leftOut,
        Drawing overview,
        List<MeasurePart> measures,
        List<AbsentRow> absent,
        List<String> coincidences,
        List<CircumstanceRow> circumstances,
        List<LossRow> losses,
        List<PairRow> pairs,
        List<ForetoldRow> foretold,
        TestPart test) {
    public ChangePage {
        words = List.copyOf(words);
        leftOut = List.copyOf(leftOut);
        measures = List.copyOf(measures);
        absent = List.copyOf(absent);
        coincidences = List.copyOf(coincidences);
        circumstances = List.copyOf(circumstances);
        losses = List.copyOf(losses);
        pairs = List.copyOf(pairs);
        foretold = List.copyOf(foretold);
    }

    public record SidePart(String name, String counts, List<NightRow> nights) {
        public SidePart {
            nights = List.copyOf(nights);
        }
    }

    public record NightRow(String date, Link entry, String target, String files, String airmass, String moon) {}

    /**
     * @param primary whether it decides
     * @param leftOut says which values are not listed; empty when all are
     */
    public record MeasurePart(
            String id,
            String label,
            boolean primary,
            String verdict,
            String tone,
            String why,
            String middles,
            List<Labelled> grounds,
            Drawing plot,
            List<ValueRow> values,
            String leftOut) {
        public MeasurePart {
            grounds = List.copyOf(grounds);
            values = List.copyOf(values);
        }
    }

    /** @param side before or after */
    public record ValueRow(String side, String date, Link entry, String target, String value, String frames) {}

    public record AbsentRow(String label, String why) {}

    public record CircumstanceRow(String label, String before, String after) {}

    public record LossRow(String cause, String before, String after) {}

    public record PairRow(
            String target,
            Link before,
            Link after,
            String filters,
            String stars,
            String scale,
            String rotation,
            String throughput,
            String deeper,
            String remark) {}

    public record ForetoldRow(
            String label, String before, String after, String foretold, String shown, String remark) {}

    public record TestPart(String question, String sentence) {}
}
