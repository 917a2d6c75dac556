package noctuary.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import noctuary.stars.Star;
import noctuary.stars.StarField;

/**
 * One star each for the four corners and the middle of a file, to be looked at: among the measured ones whose place is
 * there, the one that stands out most, unless much nearer ones stand out nearly as much.
 */
public final class SampleStars {
    /** Part of the width and height, from a corner on, that counts as that corner. */
    private static final double CORNER = 0.28;

    private SampleStars() {}

    /** A place in the field. */
    public enum Place {
        FIRST_LEFT(0, 0),
        FIRST_RIGHT(1, 0),
        MIDDLE(0.5, 0.5),
        LAST_LEFT(0, 1),
        LAST_RIGHT(1, 1);

        private final double x;
        private final double y;

        Place(double x, double y) {
            this.x = x;
            this.y = y;
        }
    }

    /** @param peak highest pixel above the background */
    public record Sample(Place place, double x, double y, double fwhmPx, double ellipticity, double peak) {}

    /** In the order of {@link Place}; empty where no measured star lies. */
    public static List<Optional<Sample>> of(Measurement file) {
        List<Star> stars = file.field().map(StarField::stars).orElse(List.of());
        List<Optional<Sample>> samples = new ArrayList<>();
        for (Place place : Place.values()) {
            samples.add(stars.stream()
                    .filter(s -> s.measured() && distance(s, place, file) < CORNER && roomAround(s, file))
                    .max(Comparator.comparingDouble(s -> worth(s, place, file)))
                    .map(s -> new Sample(place, s.x(), s.y(), s.fwhmPx(), s.ellipticity(), s.peak())));
        }
        return samples;
    }

    /** The larger of both distances, as shares of width and height. */
    private static double distance(Star star, Place place, Measurement file) {
        return Math.max(Math.abs(star.x() / file.width() - place.x), Math.abs(star.y() / file.height() - place.y));
    }

    private static boolean roomAround(Star star, Measurement file) {
        double reach = 2.5 * star.fwhmPx();
        return star.x() > reach
                && star.y() > reach
                && star.x() < file.width() - 1 - reach
                && star.y() < file.height() - 1 - reach;
    }

    private static double worth(Star star, Place place, Measurement file) {
        return Math.log(Math.max(1, Math.min(star.snr(), 200))) - 4 * distance(star, place, file);
    }
}
