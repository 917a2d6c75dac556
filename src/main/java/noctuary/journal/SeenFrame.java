package noctuary.journal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.stream.Stream;
import noctuary.entry.Journal;
import noctuary.entry.Site;
import noctuary.entry.Slug;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.sky.Catalogue;
import noctuary.sky.Night;

/**
 * One frame by its header.
 *
 * @param target as it will name the entry: the OBJECT card, else the catalogue's object nearest to the coordinates
 * @param setup what tells one rig from another in headers: camera, pixel pitch, binning, focal length
 */
record SeenFrame(Path path, FrameHeader header, Optional<String> target, Optional<LocalDate> night, String setup) {
    static SeenFrame of(Path path, FrameHeader header, Journal journal) {
        ZoneId zone = journal.settings()
                .site()
                .map(journal.sites()::get)
                .flatMap(Site::zone)
                .orElse(ZoneOffset.UTC);
        return new SeenFrame(
                path,
                header,
                header.object()
                        .map(o -> Catalogue.canonicalName(o.value()))
                        .or(() -> header.centre().flatMap(SeenFrame::nearest)),
                header.taken().map(t -> Night.of(t.value(), zone)),
                setup(header));
    }

    boolean isStack() {
        return header.combinesSeveral();
    }

    /** The entry's name, as long as no other rig has the same target that night. */
    String slug() {
        String name = target.map(Slug::lowerCase).filter(s -> !s.isEmpty()).orElse("unnamed");
        return night.map(n -> n + "-" + name).orElse(name);
    }

    private static Optional<String> nearest(Cited<FrameHeader.Centre> centre) {
        return Catalogue.at(centre.value().raDeg(), centre.value().decDeg()).map(o -> o.name());
    }

    private static String setup(FrameHeader header) {
        return String.join(
                " ",
                header.instrument().map(Cited::value).orElse("?"),
                header.pixelPitchUm().map(c -> c.value().toString()).orElse("?"),
                Integer.toString(header.binning()),
                header.focalLengthMm()
                        .map(c -> Long.toString(Math.round(c.value())))
                        .orElse("?"));
    }

    /** What can be told of two frames of one rig apart, for the keeper. */
    String setupInWords() {
        return Stream.of(
                        header.instrument().map(Cited::value),
                        header.pixelPitchUm().map(c -> c.value() + " µm pixels"),
                        header.focalLengthMm().map(c -> Math.round(c.value()) + " mm"))
                .flatMap(Optional::stream)
                .reduce((a, b) -> a + ", " + b)
                .orElse("headers that tell no camera");
    }
}
