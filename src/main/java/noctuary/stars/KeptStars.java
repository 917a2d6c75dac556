package noctuary.stars;

import java.lang.ref.SoftReference;
import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Supplier;

/**
 * Stars that are fetched when somebody asks for one, and let go when memory is short: a journal has more of them than fit.
 * How many there are is known without.
 */
public final class KeptStars extends AbstractList<Star> implements RandomAccess {
    private final int size;
    private final long measured;
    private final Supplier<List<Star>> source;
    private SoftReference<List<Star>> held = new SoftReference<>(null);

    /**
     * @param measured how many of them are measured
     * @param source gives the same stars every time
     */
    public KeptStars(int size, long measured, Supplier<List<Star>> source) {
        this.size = size;
        this.measured = measured;
        this.source = source;
    }

    @Override
    public Star get(int index) {
        return all().get(index);
    }

    @Override
    public int size() {
        return size;
    }

    /** Says only how many, so as not to fetch them. */
    @Override
    public String toString() {
        return size + " stars";
    }

    long measured() {
        return measured;
    }

    private synchronized List<Star> all() {
        List<Star> all = held.get();
        if (all == null) {
            all = List.copyOf(source.get());
            if (all.size() != size) {
                throw new IllegalStateException(all.size() + " stars where there were " + size);
            }
            held = new SoftReference<>(all);
        }
        return all;
    }
}
