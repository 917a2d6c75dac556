package noctuary.keep;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Values that were worked out before, by the name of what they are and a key that stands for all they were worked out
 * from. They must follow from the key alone. Safe for several threads.
 */
public final class Memo {
    /** Remembers nothing. */
    public static final Memo NONE = new Memo(Optional.empty(), "");

    private final Optional<Path> folder;
    private final String program;
    private final Map<String, Shelf<?>> shelves = new ConcurrentHashMap<>();

    private Memo(Optional<Path> folder, String program) {
        this.folder = folder;
        this.program = program;
    }

    /**
     * @param folder made when needed; may be deleted at any time
     * @param program what another one worked out is forgotten
     */
    public static Memo in(Path folder, String program) {
        return new Memo(Optional.of(folder), program);
    }

    /**
     * The value kept under that key, or worked out now and kept.
     *
     * @param kind plain name, such as {@code courses}
     * @param key digest of all that the value follows from, hexadecimal; an empty one is never found again
     */
    public <T extends Record> T recall(String kind, Packing<T> packing, String key, Supplier<T> work) {
        return recall(kind, packing, key, value -> true, work);
    }

    /** As {@link #recall}, of values that say themselves whether they still hold. */
    public <T extends Record> T recall(
            String kind, Packing<T> packing, String key, Predicate<T> holds, Supplier<T> work) {
        if (folder.isEmpty() || key.isEmpty()) {
            return work.get();
        }
        Shelf<T> shelf = shelf(kind, packing);
        Optional<T> kept = shelf.find(key).filter(holds);
        if (kept.isPresent()) {
            return kept.get();
        }
        T value = work.get();
        shelf.put(key, value);
        return value;
    }

    /** The value kept under that key. */
    public <T extends Record> Optional<T> find(String kind, Packing<T> packing, String key) {
        return folder.isEmpty() || key.isEmpty()
                ? Optional.empty()
                : shelf(kind, packing).find(key);
    }

    /** Keeps a value under that key, in place of one that was there. */
    public <T extends Record> void keep(String kind, Packing<T> packing, String key, T value) {
        if (folder.isPresent() && !key.isEmpty()) {
            shelf(kind, packing).put(key, value);
        }
    }

    /**
     * Where values lie that are not asked for at every render.
     *
     * @param kind plain name, unlike that of any kind of {@link #recall}
     */
    public <T extends Record> Drawer<T> drawer(String kind, Packing<T> packing) {
        return new Drawer<>(folder.map(f -> f.resolve(kind)), packing, program);
    }

    /** Writes what is new, and forgets what was not asked for since this memo was made. */
    public void save() {
        shelves.values().forEach(Shelf::save);
    }

    @SuppressWarnings("unchecked")
    private <T extends Record> Shelf<T> shelf(String kind, Packing<T> packing) {
        return (Shelf<T>) shelves.computeIfAbsent(
                kind, k -> new Shelf<>(folder.orElseThrow().resolve(k), packing, program));
    }
}
