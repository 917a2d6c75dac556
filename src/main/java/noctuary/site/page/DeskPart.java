package noctuary.site.page;

import java.util.List;

/**
 * What the nights say of a rig, and what swapping a part would do.
 *
 * @param framing targets in the fields of all rigs; null without a field
 * @param focal sentences on focal length; empty without a frame matched to the sky
 * @param gains what changes cost beside what they surely gave
 * @param focus when to refocus, and what expansion foretells
 */
public record DeskPart(
        List<Advised.FindingRow> findings,
        Drawing framing,
        List<String> focal,
        List<ShapeRow> shapes,
        List<String> focus,
        List<GainRow> gains,
        List<SwapColumn> swaps,
        List<SwapRow> rows) {
    public DeskPart {
        findings = List.copyOf(findings);
        focal = List.copyOf(focal);
        shapes = List.copyOf(shapes);
        focus = List.copyOf(focus);
        gains = List.copyOf(gains);
        swaps = List.copyOf(swaps);
        rows = List.copyOf(rows);
    }

    /** One night's field: widths in pixels, as printed with their errors. */
    public record ShapeRow(Link entry, String night, String centre, String rise, String tilt, String says) {}

    public record GainRow(Link change, List<String> sentences) {
        public GainRow {
            sentences = List.copyOf(sentences);
        }
    }

    /** @param own whether the rig exists as it is */
    public record SwapColumn(String optics, String camera, boolean own) {}

    /** One number in all columns. */
    public record SwapRow(String label, List<String> values) {
        public SwapRow {
            values = List.copyOf(values);
        }
    }
}
