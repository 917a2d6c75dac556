package noctuary.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.fits.FrameHeader;
import noctuary.measure.FrameSheet;
import noctuary.measure.ScaleRatio;
import noctuary.rig.Optics;

/** Focal length of a rig none of whose files lies on the sky: by stars shared with a file of known scale. */
final class SharedStars {
    private static final int MOST_TRIED = 8;

    private SharedStars() {}

    /** Of the first pair of files of one target whose stars match. */
    static Optional<RigDesk.ByStars> focal(List<EntryContext> own, List<EntryContext> all) {
        List<EntryContext[]> pairs = new ArrayList<>();
        List<EntryContext> onSky =
                all.stream().filter(e -> e.traits().onSky().isPresent()).toList();
        for (EntryContext entry : own) {
            onSky.stream()
                    .filter(other -> !other.rigId().equals(entry.rigId()) && sameTarget(entry, other))
                    .forEach(other -> pairs.add(new EntryContext[] {entry, other}));
        }
        return pairs.stream()
                .limit(MOST_TRIED)
                .flatMap(pair -> focal(pair[0], pair[1]).stream())
                .findFirst();
    }

    private static boolean sameTarget(EntryContext a, EntryContext b) {
        Optional<String> target = a.sheet().target().value();
        return target.isPresent() && target.equals(b.sheet().target().value());
    }

    private static Optional<RigDesk.ByStars> focal(EntryContext entry, EntryContext known) {
        OptionalDouble pitch = entry.camera("pixel");
        Optional<FrameSheet> file = files(entry).stream()
                .filter(f -> f.measurement().readable() && f.header().isPresent())
                .findFirst();
        if (pitch.isEmpty() || file.isEmpty()) {
            return Optional.empty();
        }
        FrameSheet scaled = onSky(known).orElseThrow();
        double arcsec =
                scaled.header().orElseThrow().sky().orElseThrow().value().arcsecPerPx();
        double pixel = pitch.getAsDouble()
                * file.get().header().map(FrameHeader::binning).orElse(1);
        return ScaleRatio.of(file.get(), scaled).map(r -> {
            double mm = Optics.focalLengthMm(pixel, arcsec / r.ratio());
            return new RigDesk.ByStars(mm, mm * r.error() / r.ratio(), r.stars(), entry.slug(), known.slug());
        });
    }

    /** The first file whose header lies on the sky. */
    private static Optional<FrameSheet> onSky(EntryContext entry) {
        return files(entry).stream()
                .filter(f -> f.header().flatMap(FrameHeader::sky).isPresent())
                .findFirst();
    }

    private static List<FrameSheet> files(EntryContext entry) {
        List<FrameSheet> files = new ArrayList<>(entry.lights());
        entry.sheet().stack().ifPresent(files::add);
        return files;
    }

    /** Why a rig has no measured focal length. */
    static String whyNone(List<EntryContext> own) {
        return own.stream().allMatch(e -> e.camera("pixel").isEmpty())
                ? "the note does not give the camera’s pixel"
                : "no file of this rig carries coordinates of the sky, and none shares matching stars on the same target "
                        + "with another rig’s file that does";
    }
}
