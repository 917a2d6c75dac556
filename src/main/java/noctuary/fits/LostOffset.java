package noctuary.fits;

import java.util.List;
import noctuary.image.Plane;

/** Notices unsigned 16-bit pixels whose BZERO card was lost: nearly all of them then read far below zero. */
final class LostOffset {
    private static final int STEP = 997;
    private static final double FAR_BELOW = -1000;
    private static final double NEARLY_ALL = 0.95;

    private LostOffset() {}

    static void look(CardIndex cards, Structure structure, List<Plane> planes) {
        if (structure.bitpix() == 16 && cards.raw("BZERO").isEmpty() && isFarBelowZero(planes.get(0))) {
            cards.odd(
                    "BZERO",
                    "there is no BZERO card and nearly all pixels are far below zero",
                    "most likely unsigned pixels that lost BZERO = 32768; read as written");
        }
    }

    private static boolean isFarBelowZero(Plane plane) {
        long pixels = (long) plane.width() * plane.height();
        int looked = 0;
        int below = 0;
        for (long i = 0; i < pixels; i += STEP) {
            looked++;
            below += plane.at((int) (i % plane.width()), (int) (i / plane.width())) < FAR_BELOW ? 1 : 0;
        }
        return below > NEARLY_ALL * looked;
    }
}
