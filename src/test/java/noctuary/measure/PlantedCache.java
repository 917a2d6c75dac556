package noctuary.measure;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Fills a journal's cache with measurements that nobody measured, as the real ones are kept. */
public final class PlantedCache {
    private static final int BLOCK = 2880;

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
        return keep(file, measurement);
    }

    /** As {@link #plant}, with a file of that many black pixels, which take no room where the disk can leave them out. */
    public String plantBlack(Path file, Measurement measurement) throws IOException {
        Files.createDirectories(file.getParent());
        StringBuilder header = new StringBuilder();
        for (String card : List.of(
                "SIMPLE  =                    T",
                "BITPIX  =                   16",
                "NAXIS   =                    2",
                "NAXIS1  = %20d".formatted(measurement.width()),
                "NAXIS2  = %20d".formatted(measurement.height()),
                "COMMENT " + file.getParent().getFileName(),
                "END")) {
            header.append("%-80s".formatted(card));
        }
        try (RandomAccessFile fits = new RandomAccessFile(file.toFile(), "rw")) {
            fits.write("%-2880s".formatted(header).getBytes(StandardCharsets.US_ASCII));
            long data = 2L * measurement.width() * measurement.height();
            fits.setLength(BLOCK + (data + BLOCK - 1) / BLOCK * BLOCK);
        }
        return keep(file, measurement);
    }

    private String keep(Path file, Measurement measurement) throws IOException {
        String digest = index.digest(file);
        measured.keep(digest, measurement.of(digest));
        return digest;
    }

    public void save() {
        index.save();
    }
}
