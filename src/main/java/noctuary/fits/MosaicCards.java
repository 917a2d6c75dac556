package noctuary.fits;

import java.util.Locale;
import java.util.Optional;
import noctuary.image.Mosaic;

/**
 * BAYERPAT and its company (common practice).
 *
 * <p>The pattern is named for the picture's top left pixel, the offsets shift it. Where ROWORDER says that rows run
 * from the bottom up, the first stored row is the picture's last, so the pattern is turned over: of an even number of
 * rows RGGB becomes GBRG, of an odd number it stays.
 */
final class MosaicCards {
    private MosaicCards() {}

    static Optional<Cited<Mosaic>> mosaic(CardIndex cards, int height) {
        Optional<Cited<String>> named = cards.text("BAYERPAT", "COLORTYP");
        if (named.isEmpty()) {
            return Optional.empty();
        }
        String pattern = named.get().value().toUpperCase(Locale.ROOT);
        for (Mosaic mosaic : Mosaic.values()) {
            if (mosaic.name().equals(pattern)) {
                return named.map(n -> new Cited<>(stored(mosaic, cards, height), n.card(), n.text()));
            }
        }
        if (named.get().card().equals("BAYERPAT")) {
            cards.odd("BAYERPAT", "BAYERPAT = " + pattern + " is no pattern of 2 x 2", "the image is taken as mono");
        }
        return Optional.empty();
    }

    private static Mosaic stored(Mosaic named, CardIndex cards, int height) {
        Mosaic shifted = named.shifted(parity(cards, "XBAYROFF"), parity(cards, "YBAYROFF"));
        boolean bottomUp = cards.text("ROWORDER")
                .filter(order -> order.value().equalsIgnoreCase("BOTTOM-UP"))
                .isPresent();
        return bottomUp ? shifted.shifted(0, (height - 1) & 1) : shifted;
    }

    private static int parity(CardIndex cards, String keyword) {
        return cards.number(keyword).map(n -> n.value().intValue() & 1).orElse(0);
    }
}
