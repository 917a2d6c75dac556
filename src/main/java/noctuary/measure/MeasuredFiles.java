package noctuary.measure;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import noctuary.keep.Memo;
import noctuary.stars.Star;
import noctuary.stars.StarField;

/** Files and what was measured on them, from the cache where it is there. */
public final class MeasuredFiles {
    /** Files in memory at once. */
    private static final int AT_ONCE = 2;

    private static final String KIND = "measured-" + Meter.ENGINE;

    private final ContentIndex index;
    private final MeasurementCache cache;
    private final Memo memo;
    private final Map<Path, Measurement> measurements = new ConcurrentHashMap<>();
    private final AtomicInteger fresh = new AtomicInteger();

    /** @param folder the cache's folder, made when needed */
    public MeasuredFiles(Path folder) {
        this(folder, Memo.NONE);
    }

    /** @param memo keeps what is wanted of every file together */
    public MeasuredFiles(Path folder, Memo memo) {
        this.memo = memo;
        this.index = new ContentIndex(folder.resolve("files.tsv"));
        this.cache = new MeasurementCache(folder.resolve("measured"));
    }

    /** Measures what is new or changed; tells {@code progress} the number of files done. */
    public void measure(Collection<Path> files, IntConsumer progress) {
        ExecutorService workers = Executors.newFixedThreadPool(AT_ONCE);
        try {
            Map<Path, Future<Measurement>> waiting = new LinkedHashMap<>();
            List.copyOf(files).forEach(file -> waiting.computeIfAbsent(file, f -> workers.submit(() -> find(f))));
            int done = 0;
            for (Map.Entry<Path, Future<Measurement>> each : waiting.entrySet()) {
                measurements.put(each.getKey(), each.getValue().get());
                progress.accept(++done);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("measuring failed", e.getCause());
        } finally {
            workers.shutdownNow();
            index.save();
        }
    }

    /** The file's measurement, made now if it was not asked for before. */
    public Measurement of(Path file) {
        return measurements.computeIfAbsent(file, this::find);
    }

    /** Identity of the file's bytes; empty when it cannot be read. */
    public Optional<String> digest(Path file) {
        try {
            return Optional.of(index.digest(file));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** How many files were not found in the cache. */
    public int measuredNow() {
        return fresh.get();
    }

    private Measurement find(Path file) {
        Optional<String> digest = digest(file);
        if (digest.isEmpty()) {
            fresh.incrementAndGet();
            return Meter.measure(file);
        }
        String content = digest.get();
        return memo.recall(KIND, BareMeasurement.PACKING, content, () -> BareMeasurement.of(whole(file, content)))
                .whole(() -> stars(file, content));
    }

    private Measurement whole(Path file, String content) {
        return cache.find(content).orElseGet(() -> {
            fresh.incrementAndGet();
            return measured(file, content);
        });
    }

    private Measurement measured(Path file, String content) {
        Measurement measurement = Meter.measure(file).of(content);
        cache.keep(content, measurement);
        return measurement;
    }

    private List<Star> stars(Path file, String content) {
        return cache.find(content)
                .orElseGet(() -> measured(file, content))
                .field()
                .map(StarField::stars)
                .orElse(List.of());
    }
}
