package noctuary.fits;

import java.util.Locale;
import java.util.Optional;

/**
 * Where the telescope was pointed: RA and DEC, or the object's place (keywords of the HEASARC and NOAO dictionaries).
 */
final class PointingCards {
    private static final double NEAR_DEG = 5;

    private PointingCards() {}

    static Optional<Cited<FrameHeader.Centre>> centre(CardIndex cards) {
        Optional<Cited<FrameHeader.Centre>> telescope = centre(cards, "RA", "DEC");
        return telescope.isPresent() ? telescope : centre(cards, "OBJCTRA", "OBJCTDEC");
    }

    private static Optional<Cited<FrameHeader.Centre>> centre(CardIndex cards, String raCard, String decCard) {
        Optional<Card> ra = cards.find(raCard);
        Optional<Card> dec = cards.find(decCard);
        if (ra.isEmpty() || dec.isEmpty()) {
            return Optional.empty();
        }
        double raDeg = raDeg(cards, ra.get());
        double decDeg = Angle.parse(dec.get().value());
        if (!(raDeg >= 0 && raDeg <= 360 && Math.abs(decDeg) <= 90)) {
            cards.odd(
                    raCard,
                    raCard + " = " + ra.get().value() + ", " + decCard + " = "
                            + dec.get().value() + " is no place in the sky",
                    "it is left out");
            return Optional.empty();
        }
        String text = ra.get().value().strip() + ", " + dec.get().value().strip();
        return Optional.of(new Cited<>(new FrameHeader.Centre(raDeg % 360, decDeg), raCard, text));
    }

    /** Text with separators is in hours, a number in degrees, unless its comment or another card says hours. */
    private static double raDeg(CardIndex cards, Card ra) {
        double value = Angle.parse(ra.value());
        double number = Numerals.parse(ra.value());
        if (Double.isNaN(number)) {
            return value * 15;
        }
        boolean hours = ra.comment().toLowerCase(Locale.ROOT).matches(".*(hour|\\[h).*");
        return hours || isHours(cards, ra, number) ? number * 15 : number;
    }

    private static boolean isHours(CardIndex cards, Card ra, double number) {
        Optional<Double> elsewhere = elsewhereDeg(cards);
        if (number > 24 || elsewhere.isEmpty() || ra.keyword().equals("OBJCTRA")) {
            return number <= 24 && ra.keyword().equals("OBJCTRA");
        }
        return distance(number * 15, elsewhere.get()) < NEAR_DEG && distance(number, elsewhere.get()) > NEAR_DEG;
    }

    private static Optional<Double> elsewhereDeg(CardIndex cards) {
        Optional<Double> object =
                cards.raw("OBJCTRA").map(card -> Angle.parse(card.value()) * 15).filter(Double::isFinite);
        return object.isPresent()
                ? object
                : cards.raw("CRVAL1").map(card -> Numerals.parse(card.value())).filter(Double::isFinite);
    }

    private static double distance(double a, double b) {
        double apart = Math.abs(a - b) % 360;
        return Math.min(apart, 360 - apart);
    }
}
