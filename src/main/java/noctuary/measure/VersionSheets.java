package noctuary.measure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.effect.Effect;
import noctuary.entry.Entry;

/** Measures every version against the one it came from, or finds it measured. */
public final class VersionSheets {
    private static final String STACK = "stack";

    private final MeasuredFiles files;
    private final EffectCache cache;

    /** @param folder the cache's folder, made when needed */
    public VersionSheets(MeasuredFiles files, Path folder) {
        this.files = files;
        this.cache = new EffectCache(folder.resolve("effects"));
    }

    /** In the order of the note. */
    public List<VersionSheet> of(Entry entry) {
        List<VersionSheet> sheets = new ArrayList<>();
        for (Entry.Version version : entry.versions()) {
            sheets.add(of(entry, version));
        }
        return sheets;
    }

    private VersionSheet of(Entry entry, Entry.Version version) {
        Optional<Path> origin = origin(entry, version.from());
        if (version.image().isEmpty()) {
            return VersionSheet.without(version, "the note names no picture of it");
        }
        if (origin.isEmpty()) {
            return VersionSheet.without(
                    version, "there is no file of " + (version.from().equals(STACK) ? "the stack" : version.from()));
        }
        Path picture = version.image().get();
        Optional<String> bad = unfit(origin.get()).or(() -> unfit(picture));
        if (bad.isPresent()) {
            return VersionSheet.without(version, bad.get());
        }
        try {
            return VersionSheet.of(version, effect(origin.get(), picture));
        } catch (OutOfMemoryError e) {
            return VersionSheet.without(version, "the two do not fit into memory; give Java more (-Xmx)");
        } catch (RuntimeException e) {
            return VersionSheet.without(version, "comparing failed: " + e);
        }
    }

    private static Optional<Path> origin(Entry entry, String from) {
        return from.equals(STACK)
                ? entry.stack()
                : entry.versions().stream()
                        .filter(v -> v.name().equals(from))
                        .findFirst()
                        .flatMap(Entry.Version::image);
    }

    private Optional<String> unfit(Path file) {
        Measurement measured = files.of(file);
        String name = file.getFileName().toString();
        if (!measured.readable()) {
            return Optional.of(name + " cannot be read");
        }
        boolean mosaic = measured.planes().size() == 1
                && measured.header().flatMap(h -> h.mosaic()).isPresent();
        return mosaic ? Optional.of(name + " is still a colour mosaic") : Optional.empty();
    }

    private Effect effect(Path origin, Path picture) {
        Optional<String> key =
                files.digest(origin).flatMap(a -> files.digest(picture).map(b -> a + b));
        Optional<Effect> kept = key.flatMap(cache::find);
        if (kept.isPresent()) {
            return kept.get();
        }
        Effect effect = EffectMeter.measure(origin, files.of(origin), picture, files.of(picture));
        key.ifPresent(k -> cache.keep(k, effect));
        return effect;
    }
}
