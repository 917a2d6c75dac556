package noctuary.fits;

import java.util.Optional;

/** What a compressed image says of its tiles and its dither (FITS 4.0, sections 10.1.1 and 10.2.1). */
final class TileClaims {
    private static final int MOST_AXES = 9;
    private static final long LAST_DITHER_SEED = 10_000;

    private TileClaims() {}

    /** Whether tiles have a size, none is larger than the image, and the dither begins within its table. */
    static boolean sound(CardIndex cards) {
        for (int axis = 1; axis <= MOST_AXES; axis++) {
            Optional<Card> tile = cards.raw("ZTILE" + axis);
            if (tile.isPresent() && !within(tile.get(), 1, longest(cards, axis))) {
                return false;
            }
        }
        Optional<Card> seed = cards.raw("ZDITHER0");
        return seed.isEmpty() || within(seed.get(), 1, LAST_DITHER_SEED);
    }

    private static long longest(CardIndex cards, int axis) {
        double length = cards.raw("ZNAXIS" + axis)
                .map(card -> Numerals.parse(card.value()))
                .orElse(1.0);
        return Math.max(1, (long) length);
    }

    private static boolean within(Card card, long least, long most) {
        double value = Numerals.parse(card.value());
        return value == Math.rint(value) && value >= least && value <= most;
    }
}
