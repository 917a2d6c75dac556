package noctuary.fits;

import java.lang.reflect.Array;
import java.nio.ByteBuffer;
import java.util.function.Consumer;

/** Writes a library array back as the bytes an uncompressed file would hold, piece by piece. */
final class StoredBytes {
    private static final int PIECE = 1 << 18;

    private final ByteBuffer piece = ByteBuffer.allocate(PIECE);
    private final Consumer<ByteBuffer> sink;

    StoredBytes(Consumer<ByteBuffer> sink) {
        this.sink = sink;
    }

    /** Sends all values of the array, nested or not, in order. */
    void send(Object array) {
        if (array instanceof Object[] nested) {
            for (Object inner : nested) {
                send(inner);
            }
        } else {
            int length = Array.getLength(array);
            for (int from = 0, count; from < length; from += count) {
                piece.clear();
                count = put(array, from, length - from);
                sink.accept(piece.rewind());
            }
        }
    }

    /** Puts as many values as fit; the answer is how many. */
    private int put(Object array, int from, int left) {
        if (array instanceof byte[] bytes) {
            int count = Math.min(left, PIECE);
            piece.put(bytes, from, count).limit(count);
            return count;
        }
        if (array instanceof short[] shorts) {
            int count = fit(left, Short.BYTES);
            piece.asShortBuffer().put(shorts, from, count);
            return count;
        }
        if (array instanceof int[] ints) {
            int count = fit(left, Integer.BYTES);
            piece.asIntBuffer().put(ints, from, count);
            return count;
        }
        if (array instanceof long[] longs) {
            int count = fit(left, Long.BYTES);
            piece.asLongBuffer().put(longs, from, count);
            return count;
        }
        if (array instanceof float[] floats) {
            int count = fit(left, Float.BYTES);
            piece.asFloatBuffer().put(floats, from, count);
            return count;
        }
        int count = fit(left, Double.BYTES);
        piece.asDoubleBuffer().put((double[]) array, from, count);
        return count;
    }

    private int fit(int left, int bytes) {
        int count = Math.min(left, PIECE / bytes);
        piece.limit(count * bytes);
        return count;
    }
}
