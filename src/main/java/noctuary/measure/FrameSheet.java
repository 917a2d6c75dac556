package noctuary.measure;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.fits.FrameHeader;
import noctuary.fits.FrameKind;
import noctuary.stars.Star;
import noctuary.stars.StarField;

/**
 * One file of an entry, measured.
 *
 * @param name relative to the entry's folder, or the end of its path in an archive
 * @param report with the rig's scale filled in where the header has none
 * @param notCounted why it adds no exposure, when it does not: "it ..."
 */
public record FrameSheet(
        String name,
        Path path,
        FrameKind kind,
        FrameReport report,
        Measurement measurement,
        Optional<String> notCounted) {
    /** Whether it adds exposure; such a file could be read and has a header. */
    public boolean counted() {
        return notCounted.isEmpty();
    }

    public Optional<FrameHeader> header() {
        return measurement.header();
    }

    /** The same file, with the scale that the rig foretells where its header tells none. */
    FrameSheet withRigScale(OptionalDouble arcsecPerSensorPx) {
        return new FrameSheet(
                name, path, kind, FrameReports.of(name, measurement, arcsecPerSensorPx), measurement, notCounted);
    }

    /** All stars found on the plane that was measured, brightest first; empty for none. */
    public List<Star> stars() {
        return measurement.field().map(StarField::stars).orElse(List.of());
    }
}
