package noctuary.keep;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Records to bytes and back. What may be inside follows from the declaration alone (records, closed families of
 * records, enums, lists, sets, maps, optional and plain values), never from the bytes, which can at worst be refused.
 */
public final class Packing<T> {
    private final Class<T> type;
    private final Form form;
    private final String shape;

    private Packing(Class<T> type, boolean gaps) {
        Forms forms = new Forms(gaps);
        this.type = type;
        this.form = forms.of(type, Map.of());
        this.shape = LastingName.of(forms.shape());
    }

    public static <T extends Record> Packing<T> of(Class<T> type) {
        return new Packing<>(type, false);
    }

    /** As {@link #of}, of records whose components, and what lists hold, may be null. */
    public static <T extends Record> Packing<T> withGaps(Class<T> type) {
        return new Packing<>(type, true);
    }

    /** Changes whenever a component of any record inside is added, removed, renamed or gets another type. */
    public String shape() {
        return shape;
    }

    public byte[] pack(T value) {
        PackedOut out = new PackedOut();
        form.write(value, out);
        return out.bytes();
    }

    /** One word that stands for the value. */
    public String digest(T value) {
        return new Digest().bytes(pack(value)).hex();
    }

    /** Empty for bytes that are no such value. */
    public Optional<T> unpack(byte[] bytes) {
        return unpack(new PackedIn(bytes));
    }

    /** The value in a file of its own; empty when there is none, or it is damaged. */
    public Optional<T> find(Path place) {
        try {
            return unpack(KeptFile.readSummed(place));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Keeps it there, as {@link KeptFile#writeSummed} does. */
    public void keep(Path place, T value) {
        KeptFile.writeSummed(place, pack(value));
    }

    Optional<T> unpack(PackedIn in) {
        try {
            T value = type.cast(form.read(in));
            return in.done() ? Optional.of(value) : Optional.empty();
        } catch (RuntimeException e) {
            return Optional.empty();
        }
    }
}
