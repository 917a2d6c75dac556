package noctuary.fits;

import java.util.Optional;

/**
 * World coordinates of the first two axes (FITS 4.0 section 8; Greisen and Calabretta 2002; Calabretta and Greisen
 * 2002), linear part only: distortion polynomials are left out, so scale and rotation hold at the reference pixel.
 */
final class SkyCards {
    private static final double LARGEST_SCALE = 1800;

    private final CardIndex cards;
    private final int width;
    private final int height;

    SkyCards(CardIndex cards, int width, int height) {
        this.cards = cards;
        this.width = width;
        this.height = height;
    }

    Optional<Cited<SkyPlane>> sky() {
        String first = axisType(1);
        String second = axisType(2);
        boolean swapped = first.startsWith("DEC") && second.startsWith("RA-");
        if (!swapped && !(first.startsWith("RA-") && second.startsWith("DEC"))) {
            return Optional.empty();
        }
        Optional<PlateCards> plate = PlateCards.of(cards);
        if (plate.isPresent()) {
            double[] onPlate = plate.get().intermediateDeg((width + 1) / 2.0, (height + 1) / 2.0);
            Linear atCentre = plate.get().linear();
            return Optional.of(cite(atCentre, Projection.TAN.skyDeg(atCentre, onPlate)));
        }
        Optional<Linear> linear = Linear.of(cards, swapped);
        if (linear.isEmpty()) {
            cards.odd("CTYPE1", "the coordinates are incomplete or contradict themselves", "they are left out");
            return Optional.empty();
        }
        return plane(linear.get(), Projection.named(first));
    }

    private String axisType(int axis) {
        return cards.text("CTYPE" + axis).map(Cited::value).orElse("");
    }

    private Optional<Cited<SkyPlane>> plane(Linear linear, Optional<Projection> projection) {
        double scale = 3600 * Math.sqrt(Math.abs(linear.determinant()));
        if (!(scale > 0 && scale < LARGEST_SCALE)) {
            cards.odd(linear.card(), "the coordinates give " + scale + " arcsec per pixel", "they are left out");
            return Optional.empty();
        }
        if (projection.isEmpty()) {
            cards.odd("CTYPE1", "the projection " + axisType(1) + " is not read", "the coordinates are left out");
            return Optional.empty();
        }
        if (isShrunk(linear)) {
            cards.odd(
                    "CRPIX1",
                    "the reference pixel lies where the middle of a larger frame would be, far outside this image",
                    "shrunk or cut after the coordinates were written; they are left out");
            return Optional.empty();
        }
        double[] centre = projection.get().skyDeg(linear, (width + 1) / 2.0, (height + 1) / 2.0);
        if (Double.isNaN(centre[0]) || Double.isNaN(centre[1])) {
            cards.odd("CRPIX1", "the middle of the image lies outside the projection", "the coordinates are left out");
            return Optional.empty();
        }
        return Optional.of(cite(linear, centre));
    }

    private static Cited<SkyPlane> cite(Linear linear, double[] centre) {
        double scale = 3600 * Math.sqrt(Math.abs(linear.determinant()));
        double rotation = (Math.toDegrees(Math.atan2(linear.m12(), linear.m22())) + 360) % 360;
        SkyPlane sky = new SkyPlane(centre[0], centre[1], scale, rotation, linear.determinant() > 0);
        return new Cited<>(sky, linear.card(), linear.text());
    }

    /** Both reference pixels at the same whole multiple of half the image, two or more times its size. */
    private boolean isShrunk(Linear linear) {
        double across = 2 * linear.crpix1() / width;
        double down = 2 * linear.crpix2() / height;
        return across > 2.9
                && Math.abs(across - Math.rint(across)) < 0.1
                && Math.abs(across - down) < 0.1
                && Math.abs(down - Math.rint(down)) < 0.1
                && Math.rint(across) % 2 == 0;
    }
}
