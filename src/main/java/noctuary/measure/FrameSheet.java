package noctuary.measure;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import noctuary.fits.FrameHeader;
import noctuary.fits.FrameKind;
import noctuary.stars.Star;

/**
 * One file of an entry, measured.
 *
 * @param name as the keeper named it (relative to the entry or {@code archive:...})
 * @param header absent when the file could not be read or is a picture
 * @param stars as found on the plane that was measured; empty for none
 * @param notCounted why it adds no exposure, when it does not
 */
public record FrameSheet(
        String name,
        Path path,
        FrameKind kind,
        FrameReport report,
        Optional<FrameHeader> header,
        List<Star> stars,
        Optional<String> notCounted) {
    public FrameSheet {
        stars = List.copyOf(stars);
    }
}
