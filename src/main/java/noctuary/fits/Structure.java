package noctuary.fits;

import java.util.Arrays;
import java.util.List;

/**
 * What a header claims about its data unit (FITS 4.0 sections 4.4.1 and 10.1).
 *
 * @param bitpix of the stored array; of the decompressed one for a tile-compressed image
 * @param axes NAXIS1 first; of the decompressed image for a tile-compressed one
 * @param dataBytes length of the data unit without padding
 * @param tiled true for a tile-compressed image
 * @param table true for anything but an image
 */
record Structure(int bitpix, long[] axes, long dataBytes, boolean tiled, boolean table) {
    private static final int MOST_AXES = 999;
    private static final List<Long> BITPIX = List.of(8L, 16L, 32L, 64L, -32L, -64L);

    static Structure of(CardIndex cards) throws UnreadableException {
        long[] axes = axes(cards, "NAXIS");
        long bitpix = bitpix(cards, "BITPIX");
        long bytes = dataBytes(cards, bitpix, axes);
        String extension = cards.raw("XTENSION").map(c -> c.value().strip()).orElse("IMAGE");
        boolean table = !extension.equals("IMAGE") && !extension.equals("IUEIMAGE");
        boolean tiled = table && cards.isTrue("ZIMAGE");
        if (tiled) {
            return new Structure((int) bitpix(cards, "ZBITPIX"), axes(cards, "ZNAXIS"), bytes, true, true);
        }
        return new Structure((int) bitpix, axes, bytes, false, table || isGroups(cards, axes));
    }

    boolean isImage() {
        return (tiled || !table) && axes.length >= 2 && pixels() != 0;
    }

    /** The product of the axes; Long.MAX_VALUE when it is larger than that. */
    long pixels() {
        return axes.length == 0 ? 0 : product(axes, 0);
    }

    private static long[] axes(CardIndex cards, String keyword) throws UnreadableException {
        long count = integer(cards, keyword);
        if (count < 0 || count > MOST_AXES) {
            throw damaged(keyword + " = " + count, "0 to 999 axes are possible");
        }
        long[] axes = new long[(int) count];
        for (int i = 0; i < axes.length; i++) {
            axes[i] = integer(cards, keyword + (i + 1));
            if (axes[i] < 0) {
                throw damaged(keyword + (i + 1) + " = " + axes[i], "an axis cannot be negative");
            }
        }
        return axes;
    }

    private static long bitpix(CardIndex cards, String keyword) throws UnreadableException {
        long bitpix = integer(cards, keyword);
        if (!BITPIX.contains(bitpix)) {
            throw damaged(keyword + " = " + bitpix, "8, 16, 32, 64, -32 and -64 are possible");
        }
        return bitpix;
    }

    private static boolean isGroups(CardIndex cards, long[] axes) {
        return axes.length > 0 && axes[0] == 0 && cards.isTrue("GROUPS");
    }

    private static long dataBytes(CardIndex cards, long bitpix, long[] axes) throws UnreadableException {
        if (axes.length == 0) {
            return 0;
        }
        boolean groups = isGroups(cards, axes);
        boolean extension = cards.raw("XTENSION").isPresent();
        long parameters = groups || extension ? integer(cards, "PCOUNT", 0) : 0;
        long count = groups || extension ? integer(cards, "GCOUNT", 1) : 1;
        if (parameters < 0 || count < 0) {
            throw damaged("PCOUNT or GCOUNT is negative", "neither can be");
        }
        long elements = axes.length == 1 && groups ? 0 : product(axes, groups ? 1 : 0);
        return times(Math.abs(bitpix) / 8, times(count, plus(parameters, elements)));
    }

    private static long product(long[] axes, int from) {
        if (Arrays.stream(axes, from, axes.length).anyMatch(axis -> axis == 0)) {
            return 0;
        }
        return Arrays.stream(axes, from, axes.length).reduce(1, Structure::times);
    }

    private static long times(long a, long b) {
        return a != 0 && b > Long.MAX_VALUE / a ? Long.MAX_VALUE : a * b;
    }

    private static long plus(long a, long b) {
        return a > Long.MAX_VALUE - b ? Long.MAX_VALUE : a + b;
    }

    private static long integer(CardIndex cards, String keyword, long otherwise) throws UnreadableException {
        return cards.raw(keyword).isPresent() ? integer(cards, keyword) : otherwise;
    }

    private static long integer(CardIndex cards, String keyword) throws UnreadableException {
        Card card = cards.raw(keyword).orElseThrow(() -> damaged("there is no " + keyword + " card", "it is required"));
        try {
            return Long.parseLong(card.value().strip());
        } catch (NumberFormatException e) {
            throw damaged(keyword + " = " + card.value(), "a whole number is required");
        }
    }

    private static UnreadableException damaged(String what, String rule) {
        return new UnreadableException("has a damaged header: " + what + " (" + rule + ")", Hdu.COPY_AGAIN);
    }
}
