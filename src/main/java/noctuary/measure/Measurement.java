package noctuary.measure;

import java.util.List;
import java.util.Optional;
import noctuary.fits.FrameHeader;
import noctuary.noise.Defects;
import noctuary.noise.NoiseReport;
import noctuary.stars.Background;
import noctuary.stars.StarField;
import noctuary.stars.Summary;

/**
 * What one file gave, whatever rig or entry it belongs to: this is what the cache keeps.
 *
 * @param planes 1 or 3; empty when the file could not be read
 * @param field of the plane that stands for the file: the only one, or the middle (green) of three
 * @param noise of that plane, as defects
 * @param pixelDigest identity of the pixels; empty when there are none
 * @param elongation that the stars have in common
 * @param content identity of the file's bytes; empty when it is not told
 */
public record Measurement(
        FrameReport.Kind kind,
        int width,
        int height,
        List<PlaneSummary> planes,
        Optional<FrameHeader> header,
        Optional<StarField> field,
        Optional<NoiseReport> noise,
        Optional<Defects> defects,
        String pixelDigest,
        List<FrameReport.Trouble> troubles,
        Optional<Elongation> elongation,
        String content) {
    public Measurement {
        planes = List.copyOf(planes);
        troubles = List.copyOf(troubles);
    }

    public Measurement(
            FrameReport.Kind kind,
            int width,
            int height,
            List<PlaneSummary> planes,
            Optional<FrameHeader> header,
            Optional<StarField> field,
            Optional<NoiseReport> noise,
            Optional<Defects> defects,
            String pixelDigest,
            List<FrameReport.Trouble> troubles) {
        this(
                kind,
                width,
                height,
                planes,
                header,
                field,
                noise,
                defects,
                pixelDigest,
                troubles,
                field.flatMap(f -> Elongation.of(f.stars())),
                "");
    }

    /** The same measurement of a file whose bytes have this identity. */
    Measurement of(String fileContent) {
        return with(field, fileContent);
    }

    Measurement with(Optional<StarField> otherField) {
        return with(otherField, content);
    }

    private Measurement with(Optional<StarField> otherField, String otherContent) {
        return new Measurement(
                kind,
                width,
                height,
                planes,
                header,
                otherField,
                noise,
                defects,
                pixelDigest,
                troubles,
                elongation,
                otherContent);
    }

    /** One plane's sky and star width. */
    public record PlaneSummary(Background background, Optional<Summary> fwhmPx) {}

    /** A file that could not be read. */
    static Measurement unreadable(FrameReport.Kind kind, String what, String hint) {
        var trouble = new FrameReport.Trouble("", what, hint);
        return new Measurement(
                kind,
                0,
                0,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                List.of(trouble));
    }

    public boolean readable() {
        return !planes.isEmpty();
    }
}
