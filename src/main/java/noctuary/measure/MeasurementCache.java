package noctuary.measure;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import noctuary.keep.KeptFile;

/**
 * Measurements kept in a folder by the identity of the file's bytes and the engine that made them. Whatever is damaged,
 * missing or not writable costs time only.
 */
final class MeasurementCache {
    private static final JsonMapper JSON = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .build();

    private final Path folder;

    MeasurementCache(Path folder) {
        this.folder = folder;
    }

    Optional<Measurement> find(String contentDigest) {
        try {
            return Optional.of(JSON.readValue(Files.readAllBytes(place(contentDigest)), Kept.class))
                    .filter(kept -> kept.engine().equals(Meter.ENGINE))
                    .map(Kept::measurement);
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    void keep(String contentDigest, Measurement measurement) {
        try {
            KeptFile.write(place(contentDigest), JSON.writeValueAsBytes(new Kept(Meter.ENGINE, measurement)));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a measurement must be writable", e);
        }
    }

    private Path place(String contentDigest) {
        return folder.resolve(contentDigest.substring(0, 2)).resolve(contentDigest.substring(2) + ".json");
    }

    private record Kept(String engine, Measurement measurement) {}
}
