package noctuary.site.page;

import java.util.List;

/**
 * What the nights say of a rig, and what swapping a part would do.
 *
 * @param framing targets in the fields of all rigs; null without a field
 * @param focal sentences on focal length; empty without a frame matched to the sky
 * @param gains what changes cost beside what they surely gave
 * @param focus when to refocus, and what expansion foretells
 * @param swaps one part exchanged, a table each
 */
public record DeskPart(
        List<Advised.FindingRow> findings,
        Drawing framing,
        List<String> focal,
        List<ShapeRow> shapes,
        List<String> focus,
        List<GainRow> gains,
        List<SwapPart> swaps) {
    public DeskPart {
        findings = List.copyOf(findings);
        focal = List.copyOf(focal);
        shapes = List.copyOf(shapes);
        focus = List.copyOf(focus);
        gains = List.copyOf(gains);
        swaps = List.copyOf(swaps);
    }

    /** One night's field: widths in pixels, as printed with their errors. */
    public record ShapeRow(Link entry, String night, String centre, String rise, String tilt, String says) {}

    public record GainRow(Link change, List<String> sentences) {
        public GainRow {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * One part exchanged, side by side.
     *
     * @param differences what the first exchange would change, in a line
     * @param troubles what the checks say of the exchanges
     * @param leftOut parts that found no place in the table
     */
    public record SwapPart(
            String part,
            String differences,
            List<String> columns,
            List<SwapRow> rows,
            List<String> troubles,
            int leftOut) {
        public SwapPart {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            troubles = List.copyOf(troubles);
        }
    }

    /** One number in all columns. */
    public record SwapRow(String label, List<SwapCell> cells) {
        public SwapRow {
            cells = List.copyOf(cells);
        }
    }

    /** @param changed by the exchange */
    public record SwapCell(String value, boolean changed) {}
}
