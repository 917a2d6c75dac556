package noctuary.fits;

import java.util.Locale;
import java.util.Optional;

/**
 * The linear step from pixels to intermediate world coordinates, degrees, longitude in the first row.
 *
 * @param card that gave the matrix
 * @param text of that card
 */
record Linear(
        double m11,
        double m12,
        double m21,
        double m22,
        double crpix1,
        double crpix2,
        double raDeg,
        double decDeg,
        double lonPoleDeg,
        String card,
        String text) {

    double determinant() {
        return m11 * m22 - m12 * m21;
    }

    /** @param swapped true when the declination is on the first axis */
    static Optional<Linear> of(CardIndex cards, boolean swapped) {
        Optional<double[]> matrix = matrix(cards);
        int ra = swapped ? 2 : 1;
        Optional<Cited<Double>> crval1 = cards.number("CRVAL" + ra);
        Optional<Cited<Double>> crval2 = cards.number("CRVAL" + (3 - ra));
        if (matrix.isEmpty() || crval1.isEmpty() || crval2.isEmpty()) {
            return Optional.empty();
        }
        double[] m = matrix.get();
        double toRa = degreesPerUnit(cards, ra);
        double toDec = degreesPerUnit(cards, 3 - ra);
        int r = 2 * (ra - 1);
        double dec = crval2.get().value() * toDec;
        String card = origin(cards);
        return Optional.of(new Linear(
                m[r] * toRa,
                m[r + 1] * toRa,
                m[2 - r] * toDec,
                m[3 - r] * toDec,
                cards.number("CRPIX1").map(Cited::value).orElse(0.0),
                cards.number("CRPIX2").map(Cited::value).orElse(0.0),
                crval1.get().value() * toRa,
                dec,
                cards.number("LONPOLE").map(Cited::value).orElse(dec >= 90 ? 0.0 : 180.0),
                card,
                cards.raw(card).map(Card::value).orElse("")));
    }

    private static String origin(CardIndex cards) {
        return cards.raw("CD1_1").isPresent() ? "CD1_1" : cards.raw("CD1_2").isPresent() ? "CD1_2" : "CDELT1";
    }

    /** The matrix by rows: CD where any CD card stands, else CDELT with PC, else CDELT with CROTA. */
    private static Optional<double[]> matrix(CardIndex cards) {
        double[] cd = four(cards, "CD%d_%d");
        if (cd != null) {
            return valid(orElse(cd, 0, 0, 0, 0));
        }
        Optional<Cited<Double>> cdelt1 = cards.number("CDELT1");
        Optional<Cited<Double>> cdelt2 = cards.number("CDELT2");
        double[] pc = four(cards, "PC%d_%d");
        pc = pc == null ? four(cards, "PC%03d%03d") : pc;
        if (pc == null && (cdelt1.isEmpty() || cdelt2.isEmpty())) {
            return Optional.empty();
        }
        double x = cdelt1.map(Cited::value).orElse(1.0);
        double y = cdelt2.map(Cited::value).orElse(1.0);
        if (pc != null) {
            double[] p = orElse(pc, 1, 0, 0, 1);
            return valid(new double[] {x * p[0], x * p[1], y * p[2], y * p[3]});
        }
        double angle = Math.toRadians(
                cards.number("CROTA2", "CROTA1").map(Cited::value).orElse(0.0));
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return valid(new double[] {x * cos, -y * sin, x * sin, y * cos});
    }

    private static Optional<double[]> valid(double[] m) {
        return m[0] * m[3] - m[1] * m[2] == 0 ? Optional.empty() : Optional.of(m);
    }

    /** Null when none of the four cards is there; NaN for those that are not. */
    private static double[] four(CardIndex cards, String pattern) {
        double[] values = new double[4];
        boolean any = false;
        for (int i = 0; i < 4; i++) {
            String keyword = String.format(Locale.ROOT, pattern, i / 2 + 1, i % 2 + 1);
            Optional<Cited<Double>> value = cards.number(keyword);
            any |= value.isPresent();
            values[i] = value.map(Cited::value).orElse(Double.NaN);
        }
        return any ? values : null;
    }

    private static double[] orElse(double[] values, double... defaults) {
        for (int i = 0; i < 4; i++) {
            values[i] = Double.isNaN(values[i]) ? defaults[i] : values[i];
        }
        return values;
    }

    private static double degreesPerUnit(CardIndex cards, int axis) {
        String unit = cards.text("CUNIT" + axis).map(Cited::value).orElse("deg");
        return switch (unit.toLowerCase(Locale.ROOT)) {
            case "arcsec" -> 1 / 3600.0;
            case "arcmin" -> 1 / 60.0;
            case "rad" -> Math.toDegrees(1);
            default -> 1;
        };
    }
}
