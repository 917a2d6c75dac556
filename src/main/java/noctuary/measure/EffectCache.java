package noctuary.measure;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import noctuary.effect.Effect;
import noctuary.keep.KeptFile;

/** Effects kept by the identity of both files and the engines that made them. Whatever is damaged costs time only. */
final class EffectCache {
    private static final String ENGINES = Meter.ENGINE + "-" + EffectMeter.ENGINE;
    private static final JsonMapper JSON = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .build();

    private final Path folder;

    EffectCache(Path folder) {
        this.folder = folder;
    }

    Optional<Effect> find(String digests) {
        try {
            return Optional.of(JSON.readValue(KeptFile.readSummed(place(digests)), Kept.class))
                    .filter(kept -> kept.engines().equals(ENGINES))
                    .map(Kept::effect);
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    void keep(String digests, Effect effect) {
        Path place = place(digests);
        try {
            KeptFile.writeSummed(place, JSON.writeValueAsBytes(new Kept(ENGINES, effect)));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an effect must be writable", e);
        }
    }

    /** Half of each digest: together still too many to meet by chance, and short enough for a file's name. */
    private Path place(String digests) {
        return folder.resolve(digests.substring(0, 32) + "-" + digests.substring(64, 96) + ".kept");
    }

    private record Kept(String engines, Effect effect) {}
}
