package noctuary.measure;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import noctuary.keep.KeptFile;
import noctuary.keep.Packing;
import noctuary.stars.Star;
import noctuary.stars.StarField;

/**
 * Measurements kept in a folder by the identity of the file's bytes and the engine that made them, their stars beside
 * them: these are many and seldom wanted. Whatever is damaged, missing or not writable costs time only.
 */
final class MeasurementCache {
    private static final Packing<Kept> PACKING = Packing.of(Kept.class);
    private static final Packing<Stars> STARS = Packing.of(Stars.class);
    private static final String MADE_BY = Meter.ENGINE + " " + PACKING.shape() + " " + STARS.shape();

    private final Path folder;

    MeasurementCache(Path folder) {
        this.folder = folder;
    }

    Optional<BareMeasurement> find(String contentDigest) {
        return read(PACKING, place(contentDigest, ".kept"))
                .filter(kept -> kept.madeBy().equals(MADE_BY))
                .map(Kept::measurement);
    }

    Optional<List<Star>> stars(String contentDigest) {
        return read(STARS, place(contentDigest, ".stars"))
                .filter(kept -> kept.madeBy().equals(MADE_BY))
                .map(Stars::stars);
    }

    void keep(String contentDigest, Measurement measurement) {
        List<Star> stars = measurement.field().map(StarField::stars).orElse(List.of());
        KeptFile.writeSummed(place(contentDigest, ".stars"), STARS.pack(new Stars(MADE_BY, stars)));
        KeptFile.writeSummed(
                place(contentDigest, ".kept"), PACKING.pack(new Kept(MADE_BY, BareMeasurement.of(measurement))));
    }

    private static <T> Optional<T> read(Packing<T> packing, Path place) {
        try {
            return packing.unpack(KeptFile.readSummed(place));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private Path place(String contentDigest, String ending) {
        return folder.resolve(contentDigest.substring(0, 2)).resolve(contentDigest.substring(2) + ending);
    }

    private record Kept(String madeBy, BareMeasurement measurement) {}

    private record Stars(String madeBy, List<Star> stars) {}
}
