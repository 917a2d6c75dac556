package noctuary.measure;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import noctuary.keep.KeptFile;
import noctuary.keep.Packing;

/**
 * Measurements kept in a folder by the identity of the file's bytes and the engine that made them. Whatever is damaged,
 * missing or not writable costs time only.
 */
final class MeasurementCache {
    private static final Packing<Kept> PACKING = Packing.of(Kept.class);
    private static final String MADE_BY = Meter.ENGINE + " " + PACKING.shape();

    private final Path folder;

    MeasurementCache(Path folder) {
        this.folder = folder;
    }

    Optional<Measurement> find(String contentDigest) {
        try {
            return PACKING.unpack(KeptFile.readSummed(place(contentDigest)))
                    .filter(kept -> kept.madeBy().equals(MADE_BY))
                    .map(Kept::measurement);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    void keep(String contentDigest, Measurement measurement) {
        KeptFile.writeSummed(place(contentDigest), PACKING.pack(new Kept(MADE_BY, measurement)));
    }

    private Path place(String contentDigest) {
        return folder.resolve(contentDigest.substring(0, 2)).resolve(contentDigest.substring(2) + ".kept");
    }

    private record Kept(String madeBy, Measurement measurement) {}
}
