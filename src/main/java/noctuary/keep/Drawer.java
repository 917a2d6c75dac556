package noctuary.keep;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Values that were worked out before and are seldom wanted, one for each name, in a file of its own: the latest replaces
 * the one before. They must follow from their key alone. Safe for several threads, each with a name of its own.
 */
public final class Drawer<T extends Record> {
    private final Optional<Path> folder;
    private final Packing<T> packing;
    private final String madeBy;

    Drawer(Optional<Path> folder, Packing<T> packing, String program) {
        this.folder = folder;
        this.packing = packing;
        this.madeBy = packing.shape() + " " + program;
    }

    /**
     * The value kept under that name and key, or worked out now and kept.
     *
     * @param name fit for a file, such as a slug
     * @param key digest of all that the value follows from; an empty one is never found again
     */
    public T recall(String name, String key, Supplier<T> work) {
        if (folder.isEmpty() || key.isEmpty()) {
            return work.get();
        }
        Path file = folder.get().resolve(name);
        Optional<T> kept = find(file, key);
        if (kept.isPresent()) {
            return kept.get();
        }
        T value = work.get();
        keep(name, key, pack(value));
        return value;
    }

    /** The bytes of a value, for {@link #keep}. */
    public byte[] pack(T value) {
        return packing.pack(value);
    }

    /** Keeps a value under that name and key. */
    public void keep(String name, String key, byte[] packed) {
        if (folder.isPresent() && !key.isEmpty()) {
            PackedOut out = new PackedOut();
            out.text(madeBy);
            out.text(key);
            out.whole(Board.check(packed, 0, packed.length));
            out.block(packed);
            KeptFile.write(folder.get().resolve(name), out.bytes());
        }
    }

    /** The value kept under that name and key. */
    public Optional<T> find(String name, String key) {
        return folder.isEmpty() || key.isEmpty()
                ? Optional.empty()
                : find(folder.get().resolve(name), key);
    }

    private Optional<T> find(Path file, String key) {
        try {
            byte[] bytes = KeptFile.read(file);
            PackedIn in = new PackedIn(bytes);
            if (!in.text().equals(madeBy) || !in.text().equals(key)) {
                return Optional.empty();
            }
            long check = in.whole();
            int length = in.size();
            int from = in.pass(length);
            return check == Board.check(bytes, from, length)
                    ? packing.unpack(new PackedIn(bytes, from, length, PackedIn.texts()))
                    : Optional.empty();
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }
}
