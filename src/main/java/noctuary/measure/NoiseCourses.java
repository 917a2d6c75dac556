package noctuary.measure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.keep.Memo;
import noctuary.keep.Packing;

/** Noise against time of entries with single frames, combined now or found in the cache. */
public final class NoiseCourses {
    private static final int FEWEST = 4;
    /** Frames combined at most, spread over the night: each must be read again. */
    private static final int MOST = 16;

    private final MeasuredFiles files;
    private final NoiseCache cache;
    private final Memo memo;

    /** @param folder the cache's folder, made when needed */
    public NoiseCourses(MeasuredFiles files, Path folder) {
        this(files, folder, Memo.NONE);
    }

    /** @param memo keeps what is wanted of every entry */
    public NoiseCourses(MeasuredFiles files, Path folder, Memo memo) {
        this.files = files;
        this.cache = new NoiseCache(folder.resolve("noise"));
        this.memo = memo;
    }

    private record Found(Optional<NoiseOverTime> course) {
        static final Packing<Found> PACKING = Packing.of(Found.class);
    }

    /** Absent with fewer than four frames of one kind whose stars match, and whenever combining fails. */
    public Optional<NoiseOverTime> of(EntrySheet sheet) {
        return memo.recall("noise", Found.PACKING, sheet.key(), () -> new Found(read(sheet)))
                .course();
    }

    private Optional<NoiseOverTime> read(EntrySheet sheet) {
        List<FrameSheet> alike = alike(sheet);
        if (alike.size() < FEWEST) {
            return Optional.empty();
        }
        List<String> digests =
                alike.stream().flatMap(f -> files.digest(f.path()).stream()).toList();
        Optional<NoiseCache.Kept> kept = cache.find(digests);
        if (kept.isPresent()) {
            return kept.get().course();
        }
        Optional<NoiseOverTime> course = combined(alike);
        cache.keep(digests, course);
        return course;
    }

    /** The largest set of frames of one plane, size, exposure and filter, evenly thinned, in the order of time. */
    private static List<FrameSheet> alike(EntrySheet sheet) {
        Map<List<Object>, List<FrameSheet>> sets = new LinkedHashMap<>();
        sheet.frames().stream()
                .filter(FrameSheet::counted)
                .filter(f -> f.measurement().planes().size() == 1)
                .filter(f -> f.report().kind() == FrameReport.Kind.SINGLE
                        && f.report().taken().isPresent())
                .sorted(Comparator.comparing(f -> f.report().taken().orElseThrow()))
                .forEach(f ->
                        sets.computeIfAbsent(kind(f), k -> new ArrayList<>()).add(f));
        List<FrameSheet> most =
                sets.values().stream().max(Comparator.comparingInt(List::size)).orElse(List.of());
        int n = Math.min(MOST, most.size());
        return IntStream.range(0, n)
                .mapToObj(i -> most.get((int) ((long) i * most.size() / n)))
                .toList();
    }

    private static List<Object> kind(FrameSheet f) {
        return List.of(
                f.measurement().width(),
                f.measurement().height(),
                f.report().exposureSeconds(),
                f.report().filter());
    }

    private static Optional<NoiseOverTime> combined(List<FrameSheet> alike) {
        List<LaidFrame> laid = new ArrayList<>();
        laid.add(LaidFrame.first(alike.get(0)));
        alike.stream()
                .skip(1)
                .flatMap(f -> LaidFrame.on(alike.get(0), f).stream())
                .forEach(laid::add);
        int even = laid.size() / 2 * 2;
        try {
            return even < FEWEST ? Optional.empty() : NoiseCombining.of(laid.subList(0, even));
        } catch (OutOfMemoryError | RuntimeException e) {
            return Optional.empty();
        }
    }
}
