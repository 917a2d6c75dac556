package noctuary.fits;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The descriptors of a binary table's variable arrays (FITS 4.0 section 7.3.5), checked before the library allocates
 * what they claim.
 */
final class HeapPointers {
    private static final Pattern FORM = Pattern.compile("(\\d*)([LXBIJKAEDCMPQ])(?:([LXBIJKAEDCM]).*)?.*");
    private static final int MOST_FIELDS = 999;

    /** @param offset of the descriptor in its row */
    private record Pointer(int offset, boolean wide, int elementBytes) {
        long count(ByteBuffer rows, int row) {
            return wide ? rows.getLong(row + offset) : rows.getInt(row + offset);
        }

        long heapOffset(ByteBuffer rows, int row) {
            return wide ? rows.getLong(row + offset + 8) : rows.getInt(row + offset + 4);
        }
    }

    private HeapPointers() {}

    /**
     * True when every descriptor lies inside the heap.
     *
     * @param table the rows, without heap
     * @param heapBytes all that follows the rows, gap included
     */
    static boolean fit(CardIndex cards, byte[] table, int rowBytes, long heapBytes) {
        Optional<List<Pointer>> pointers = pointers(cards, rowBytes);
        if (pointers.isEmpty()) {
            return false;
        }
        ByteBuffer rows = ByteBuffer.wrap(table);
        for (int row = 0; rowBytes > 0 && row + rowBytes <= table.length; row += rowBytes) {
            for (Pointer pointer : pointers.get()) {
                long count = pointer.count(rows, row);
                long offset = pointer.heapOffset(rows, row);
                if (count < 0 || offset < 0 || offset > heapBytes || count > heapBytes / pointer.elementBytes()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Where in the heap an array begins that is not empty, for all descriptors of a table that {@link #fit}. */
    static long[] beginnings(CardIndex cards, byte[] table, int rowBytes) {
        List<Pointer> pointers = pointers(cards, rowBytes).orElse(List.of());
        ByteBuffer rows = ByteBuffer.wrap(table);
        return IntStream.range(0, rowBytes == 0 ? 0 : table.length / rowBytes)
                .map(row -> row * rowBytes)
                .boxed()
                .flatMapToLong(row -> pointers.stream()
                        .filter(pointer -> pointer.count(rows, row) > 0)
                        .mapToLong(pointer -> pointer.heapOffset(rows, row)))
                .toArray();
    }

    /** Empty when the fields do not make up the row. */
    private static Optional<List<Pointer>> pointers(CardIndex cards, int rowBytes) {
        List<Pointer> pointers = new ArrayList<>();
        long offset = 0;
        double fields = cards.number("TFIELDS").map(Cited::value).orElse(0.0);
        for (int field = 1; field <= Math.min(fields, MOST_FIELDS); field++) {
            Matcher form = FORM.matcher(
                    cards.raw("TFORM" + field).map(card -> card.value().strip()).orElse(""));
            if (!form.matches() || form.group(1).length() > 9) {
                return Optional.empty();
            }
            int repeat = form.group(1).isEmpty() ? 1 : Integer.parseInt(form.group(1));
            char type = form.group(2).charAt(0);
            if ((type == 'P' || type == 'Q') && repeat > 0) {
                String element = form.group(3) == null ? "B" : form.group(3);
                pointers.add(new Pointer((int) offset, type == 'Q', bytes(element.charAt(0))));
            }
            offset += type == 'X' ? (repeat + 7L) / 8 : (long) repeat * bytes(type);
            if (offset > rowBytes) {
                return Optional.empty();
            }
        }
        return offset == rowBytes ? Optional.of(pointers) : Optional.empty();
    }

    private static int bytes(char type) {
        return switch (type) {
            case 'I' -> 2;
            case 'J', 'E' -> 4;
            case 'K', 'D', 'C', 'P' -> 8;
            case 'M', 'Q' -> 16;
            default -> 1;
        };
    }
}
