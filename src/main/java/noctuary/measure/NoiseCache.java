package noctuary.measure;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import noctuary.keep.KeptFile;

/** Noise against time, kept by the identity of the frames and the engines. Whatever is damaged costs time only. */
final class NoiseCache {
    private static final String ENGINES = Meter.ENGINE + "-" + NoiseCombining.ENGINE;
    private static final JsonMapper JSON = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .build();

    private final Path folder;

    NoiseCache(Path folder) {
        this.folder = folder;
    }

    /** @param digests of the frames, in the order in which they were combined */
    Optional<Kept> find(List<String> digests) {
        try {
            return Optional.of(JSON.readValue(KeptFile.readSummed(place(digests)), Kept.class))
                    .filter(kept -> kept.engines().equals(ENGINES));
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    void keep(List<String> digests, Optional<NoiseOverTime> course) {
        try {
            KeptFile.writeSummed(place(digests), JSON.writeValueAsBytes(new Kept(ENGINES, course)));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("noise against time must be writable", e);
        }
    }

    private Path place(List<String> digests) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            byte[] all = String.join(" ", digests).getBytes(StandardCharsets.UTF_8);
            return folder.resolve(HexFormat.of().formatHex(sha.digest(all)) + ".kept");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** @param course absent where the frames could not be combined: not to be tried again */
    record Kept(String engines, Optional<NoiseOverTime> course) {}
}
