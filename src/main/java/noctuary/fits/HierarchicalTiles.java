package noctuary.fits;

import java.nio.ByteBuffer;

/**
 * The sizes that tiles of HCOMPRESS_1 claim of themselves (FITS 4.0 section 10.4.4): two bytes of mark, then width and
 * height. The library goes through as many pixels as they say, four thousand million if need be.
 */
final class HierarchicalTiles {
    private static final short MARK = (short) 0xDD99;
    private static final int HEAD = Short.BYTES + 2 * Integer.BYTES;
    private static final int MOST_AXES = 9;

    private HierarchicalTiles() {}

    static boolean areIn(CardIndex cards) {
        return cards.raw("ZCMPTYPE")
                .filter(card -> card.value().strip().equals("HCOMPRESS_1"))
                .isPresent();
    }

    /**
     * Whether no tile claims more pixels than the header gives a tile.
     *
     * @param beginnings of all tiles, from the heap's start
     * @param afterRows all that follows the table's rows
     * @param gap bytes between rows and heap
     */
    static boolean fit(CardIndex cards, long[] beginnings, byte[] afterRows, long gap) {
        double most = pixels(cards);
        ByteBuffer bytes = ByteBuffer.wrap(afterRows);
        for (long beginning : beginnings) {
            long at = gap + beginning;
            if (at < 0 || at + HEAD > afterRows.length) {
                return false;
            }
            if (bytes.getShort((int) at) == MARK) {
                long width = bytes.getInt((int) at + 2);
                long height = bytes.getInt((int) at + 6);
                if (width < 1 || height < 1 || (double) width * height > most) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A tile is a row where no card says otherwise (section 10.1.1). */
    private static double pixels(CardIndex cards) {
        double pixels = 1;
        for (int axis = 1; axis <= MOST_AXES; axis++) {
            String otherwise = axis == 1 ? "ZNAXIS1" : "";
            pixels *= cards.raw("ZTILE" + axis)
                    .or(() -> cards.raw(otherwise))
                    .map(card -> Numerals.parse(card.value()))
                    .orElse(1.0);
        }
        return pixels;
    }
}
