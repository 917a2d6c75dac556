package noctuary.fits;

import java.util.Optional;

/**
 * The plate solution of the digitised sky surveys, which counts before their CD cards (it is what they approximate): a
 * polynomial from millimetres on the plate to arcseconds around the plate centre, AMDX and AMDY, as the surveys' own
 * header comments define them.
 */
final class PlateCards {
    private static final int TERMS = 13;

    private final CardIndex cards;

    private PlateCards(CardIndex cards) {
        this.cards = cards;
    }

    static Optional<PlateCards> of(CardIndex cards) {
        String[] needed = {
            "AMDX1",
            "AMDX2",
            "AMDY1",
            "AMDY2",
            "PPO3",
            "PPO6",
            "XPIXELSZ",
            "YPIXELSZ",
            "CNPIX1",
            "CNPIX2",
            "PLTRAH",
            "PLTDECD"
        };
        for (String keyword : needed) {
            if (cards.number(keyword).isEmpty()) {
                return Optional.empty();
            }
        }
        return Optional.of(new PlateCards(cards));
    }

    private double value(String keyword) {
        return cards.number(keyword).map(Cited::value).orElse(0.0);
    }

    /** The linear terms, at the plate centre. */
    Linear linear() {
        double xMm = value("XPIXELSZ") / 1000;
        double yMm = value("YPIXELSZ") / 1000;
        double ra = 15 * (value("PLTRAH") + value("PLTRAM") / 60 + value("PLTRAS") / 3600);
        double dec = value("PLTDECD") + value("PLTDECM") / 60 + value("PLTDECS") / 3600;
        boolean south =
                cards.text("PLTDECSN").filter(sign -> sign.value().equals("-")).isPresent();
        return new Linear(
                -value("AMDX1") * xMm / 3600,
                value("AMDX2") * yMm / 3600,
                -value("AMDY2") * xMm / 3600,
                value("AMDY1") * yMm / 3600,
                value("PPO3") / value("XPIXELSZ") - value("CNPIX1") + 0.5,
                value("PPO6") / value("YPIXELSZ") - value("CNPIX2") + 0.5,
                ra,
                south ? -dec : dec,
                180,
                "AMDX1",
                cards.raw("AMDX1").map(Card::value).orElse(""));
    }

    /** Tangential coordinates of a 1-based pixel around the plate centre, degrees. */
    double[] intermediateDeg(double px, double py) {
        Linear linear = linear();
        double x = -(px - linear.crpix1()) * value("XPIXELSZ") / 1000;
        double y = (py - linear.crpix2()) * value("YPIXELSZ") / 1000;
        return new double[] {polynomial("AMDX", x, y) / 3600, polynomial("AMDY", y, x) / 3600};
    }

    private double polynomial(String name, double u, double v) {
        double r2 = u * u + v * v;
        double[] terms = {
            u, v, 1, u * u, u * v, v * v, r2, u * u * u, u * u * v, u * v * v, v * v * v, u * r2, u * r2 * r2
        };
        double sum = 0;
        for (int i = 0; i < TERMS; i++) {
            sum += value(name + (i + 1)) * terms[i];
        }
        return sum;
    }
}
