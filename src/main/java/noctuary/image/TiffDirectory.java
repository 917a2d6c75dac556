package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * One directory of a TIFF file (TIFF 6.0, section 2) or of its kind with addresses of 64 bits, and where the next one
 * lies. Exif (2.3, 4.5) keeps its tags in the same form.
 */
final class TiffDirectory {
    private static final int MOST_ENTRIES = 4096;
    private static final int CLASSIC = 42;
    private static final int BIG = 43;

    private final Bytes bytes;
    private final boolean big;
    private final ByteOrder order;
    private final Map<Integer, Entry> entries = new HashMap<>();
    private final long next;

    private record Entry(int type, long count, long place) {
        long bytes() {
            return count * size(type);
        }
    }

    private TiffDirectory(Bytes bytes, boolean big, ByteOrder order, long at) throws IOException {
        this.bytes = bytes;
        this.big = big;
        this.order = order;
        long count = big ? at(at, 8).getLong() : at(at, 2).getShort() & 0xFFFF;
        int length = big ? 20 : 12;
        int head = big ? 8 : 2;
        int known = (int) Math.min(MOST_ENTRIES, Math.max(0, count));
        ByteBuffer list = at(at + head, known * length);
        for (int i = 0; i < known; i++) {
            list.position(i * length);
            int tag = list.getShort() & 0xFFFF;
            entries.putIfAbsent(tag, entry(list, at + head + (long) i * length));
        }
        long end = at + head + count * length;
        this.next = end < 0 || end > bytes.length() - (big ? 8 : 4) ? 0 : address(at(end, big ? 8 : 4));
    }

    private Entry entry(ByteBuffer list, long entryAt) {
        int type = list.getShort() & 0xFFFF;
        long count = address(list);
        boolean inside = count >= 0 && count <= (big ? 8 : 4) / Math.max(1, size(type));
        return new Entry(type, count, inside ? entryAt + (big ? 12 : 8) : address(list));
    }

    private long address(ByteBuffer from) {
        return big ? from.getLong() : from.getInt() & 0xFFFFFFFFL;
    }

    /** The first directory; nothing when the bytes are no TIFF. */
    static Optional<TiffDirectory> first(Bytes bytes) throws IOException {
        if (bytes.length() < 8) {
            return Optional.empty();
        }
        ByteBuffer head = ByteBuffer.wrap(bytes.read(0, 8));
        int mark = head.getShort();
        if (mark != 0x4949 && mark != 0x4D4D) {
            return Optional.empty();
        }
        head.order(mark == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int version = head.getShort();
        if (version != CLASSIC && version != BIG) {
            return Optional.empty();
        }
        boolean big = version == BIG;
        long at = big ? ByteBuffer.wrap(bytes.read(8, 8)).order(head.order()).getLong() : head.getInt() & 0xFFFFFFFFL;
        return Optional.of(new TiffDirectory(bytes, big, head.order(), at));
    }

    Optional<TiffDirectory> next() throws IOException {
        return next == 0 ? Optional.empty() : Optional.of(new TiffDirectory(bytes, big, order, next));
    }

    ByteOrder order() {
        return order;
    }

    boolean has(int tag) {
        return entries.containsKey(tag);
    }

    /** The first value of a tag that holds whole numbers. */
    long number(int tag, long otherwise) throws IOException {
        long[] all = numbers(tag, 1);
        return all.length == 0 ? otherwise : all[0];
    }

    /** The first {@code most} values of a tag that holds whole numbers; none when it is absent or holds something else. */
    long[] numbers(int tag, int most) throws IOException {
        Entry entry = entries.get(tag);
        boolean whole = entry != null && (entry.type() <= 4 || entry.type() == 13 || entry.type() >= 16);
        if (!whole || size(entry.type()) == 0 || entry.type() == 2) {
            return new long[0];
        }
        int size = size(entry.type());
        ByteBuffer values = at(entry.place(), (int) Math.min(most, checked(entry) / size) * size);
        long[] numbers = new long[values.remaining() / size];
        Arrays.setAll(numbers, i -> value(values, size));
        return numbers;
    }

    private static long value(ByteBuffer from, int size) {
        return switch (size) {
            case 1 -> from.get() & 0xFF;
            case 2 -> from.getShort() & 0xFFFF;
            case 4 -> from.getInt() & 0xFFFFFFFFL;
            default -> from.getLong();
        };
    }

    /** The bytes of a tag, at most {@code most}; none when it is absent. */
    byte[] raw(int tag, int most) throws IOException {
        Entry entry = entries.get(tag);
        return entry == null ? new byte[0] : bytes.read(entry.place(), (int) Math.min(most, checked(entry)));
    }

    private long checked(Entry entry) throws EOFException {
        if (entry.count() < 0 || entry.count() > bytes.length() || entry.bytes() > bytes.length()) {
            throw new EOFException();
        }
        return entry.bytes();
    }

    private ByteBuffer at(long place, int count) throws IOException {
        return ByteBuffer.wrap(bytes.read(place, count)).order(order);
    }

    /** Bytes of one value (TIFF 6.0, section 2; 16 to 18 only with addresses of 64 bits); 0 when unknown. */
    private static int size(int type) {
        return switch (type) {
            case 1, 2, 6, 7 -> 1;
            case 3, 8 -> 2;
            case 4, 9, 11, 13 -> 4;
            case 5, 10, 12, 16, 17, 18 -> 8;
            default -> 0;
        };
    }
}
