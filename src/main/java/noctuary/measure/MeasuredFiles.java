package noctuary.measure;

import java.io.IOException;
import java.lang.ref.SoftReference;
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
import noctuary.stars.Star;
import noctuary.stars.StarField;

/** Files and what was measured on them, from the cache where it is there. */
public final class MeasuredFiles {
    /** Files in memory at once. */
    private static final int AT_ONCE = 2;

    private final ContentIndex index;
    private final MeasurementCache cache;
    private final Map<Path, SoftReference<Measurement>> measurements = new ConcurrentHashMap<>();
    private final Map<Path, Measurement> unidentified = new ConcurrentHashMap<>();
    private final AtomicInteger fresh = new AtomicInteger();
    private final Headroom headroom = new Headroom(Runtime.getRuntime().maxMemory());

    /** @param folder the cache's folder, made when needed */
    public MeasuredFiles(Path folder) {
        this.index = new ContentIndex(folder.resolve("files"));
        this.cache = new MeasurementCache(folder.resolve("measured"));
    }

    /** Measures what is new or changed; tells {@code progress} the number of files done. */
    public void measure(Collection<Path> files, IntConsumer progress) {
        ExecutorService workers = Executors.newFixedThreadPool(AT_ONCE);
        try {
            Map<Path, Future<Measurement>> waiting = new LinkedHashMap<>();
            List.copyOf(files).forEach(file -> waiting.computeIfAbsent(file, f -> workers.submit(() -> of(f))));
            int done = 0;
            for (Map.Entry<Path, Future<Measurement>> each : waiting.entrySet()) {
                each.getValue().get();
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

    /** The file's measurement, made now if it is not kept. */
    public Measurement of(Path file) {
        SoftReference<Measurement> held = measurements.get(file);
        Measurement before = held == null ? unidentified.get(file) : held.get();
        if (before != null) {
            return before;
        }
        Measurement found = find(file);
        if (found.content().isEmpty()) {
            unidentified.put(file, found);
        } else {
            measurements.put(file, new SoftReference<>(found));
        }
        return found;
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
            return headroom.with(file, () -> Meter.measure(file));
        }
        String content = digest.get();
        return cache.find(content)
                .orElseGet(() -> {
                    fresh.incrementAndGet();
                    return BareMeasurement.of(measured(file, content));
                })
                .whole(() -> stars(file, content));
    }

    private Measurement measured(Path file, String content) {
        Measurement measurement = headroom.with(file, () -> Meter.measure(file)).of(content);
        cache.keep(content, measurement);
        return measurement;
    }

    private List<Star> stars(Path file, String content) {
        return cache.stars(content)
                .orElseGet(() ->
                        measured(file, content).field().map(StarField::stars).orElse(List.of()));
    }
}
