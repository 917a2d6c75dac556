package noctuary.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Fills a journal's cache with measurements that nobody measured, as the real ones are kept. */
public final class PlantedCache {
    private final ContentIndex index;
    private final MeasurementCache measured;

    /** @param folder the cache's folder */
    public PlantedCache(Path folder) {
        this.index = new ContentIndex(folder.resolve("files"));
        this.measured = new MeasurementCache(folder.resolve("measured"));
    }

    /**
     * Writes a file of one line, which stands for a frame, and keeps what it is said to have given.
     *
     * @return the identity of its bytes
     */
    public String plant(Path file, Measurement measurement) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, "stands for the frame " + file + "\n");
        String digest = index.digest(file);
        measured.keep(digest, measurement.of(digest));
        return digest;
    }

    public void save() {
        index.save();
    }
}
