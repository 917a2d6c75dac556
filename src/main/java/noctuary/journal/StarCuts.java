package noctuary.journal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.draw.StarCut;
import noctuary.image.Affine;
import noctuary.measure.SampleStars;
import noctuary.measure.SampleStars.Place;
import noctuary.measure.SampleStars.Sample;
import noctuary.measure.SkyMatch;

/** Single stars of every attempt, enlarged to one scale on the sky, as the attempt's own file is shown. */
final class StarCuts {
    /** Pixels of a cut-out. */
    static final int SIDE = 144;

    static final List<String> PLACES = List.of("top left", "top right", "centre", "bottom left", "bottom right");

    /** Width of a cut-out, in widths of the widest star among all. */
    private static final double WIDTHS = 5.5;

    private StarCuts() {}

    /** What the place is called on the screen. */
    static String place(Place place, boolean firstRowOnTop) {
        String first = firstRowOnTop ? "top " : "bottom ";
        String last = firstRowOnTop ? "bottom " : "top ";
        return switch (place) {
            case FIRST_LEFT -> first + "left";
            case FIRST_RIGHT -> first + "right";
            case MIDDLE -> "centre";
            case LAST_LEFT -> last + "left";
            case LAST_RIGHT -> last + "right";
        };
    }

    /** Width of a cut-out in pixels of the reference. */
    static double widthOnReference(Map<SkyAttempt, SkyMatch> laid) {
        return WIDTHS
                * laid.entrySet().stream()
                        .flatMap(e -> SampleStars.of(e.getKey().measurement()).stream()
                                .flatMap(Optional::stream)
                                .map(s -> s.fwhmPx()
                                        * Math.sqrt(e.getValue().toReference().area())))
                        .max(Double::compare)
                        .orElse(1.0);
    }

    static byte[] cut(SkyAttempt attempt, SkyPixels pixels, Sample star, double widthPx) {
        double step = widthPx / SIDE;
        double down = attempt.finished() ? step : -step;
        double middle = (SIDE - 1) / 2.0;
        Affine toFile = new Affine(step, 0, star.x() - step * middle, 0, down, star.y() - down * middle);
        return StarCut.jpeg(pixels.planes(), pixels.toPlanes().after(toFile), SIDE);
    }
}
