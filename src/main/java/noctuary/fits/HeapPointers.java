package noctuary.fits;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The descriptors of a binary table's variable arrays (FITS 4.0 section 7.3.5), checked before the library allocates
 * what they claim.
 */
final class HeapPointers {
    private static final Pattern FORM = Pattern.compile("(\\d*)([LXBIJKAEDCMPQ])(?:([LXBIJKAEDCM]).*)?.*");
    private static final int MOST_FIELDS = 999;

    /** @param offset of the descriptor in its row */
    private record Pointer(int offset, boolean wide, int elementBytes) {}

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
                int at = row + pointer.offset();
                long count = pointer.wide() ? rows.getLong(at) : rows.getInt(at);
                long offset = pointer.wide() ? rows.getLong(at + 8) : rows.getInt(at + 4);
                if (count < 0 || offset < 0 || offset > heapBytes || count > heapBytes / pointer.elementBytes()) {
                    return false;
                }
            }
        }
        return true;
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
