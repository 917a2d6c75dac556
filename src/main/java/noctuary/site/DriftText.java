package noctuary.site;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import noctuary.measure.NightCourse;
import noctuary.measure.NightCourse.DriftRate;

/** Says how fast the field wandered over the sensor, a sentence a night. */
final class DriftText {
    private static final double MINUTES = 60;

    private DriftText() {}

    static List<String> of(List<NightCourse> courses) {
        return courses.stream()
                .flatMap(course -> course
                        .drift()
                        .map(rate -> (courses.size() > 1 ? Dates.reading(course.night()) + ": " : "") + sentence(rate))
                        .stream())
                .toList();
    }

    private static String sentence(DriftRate rate) {
        return "The field drifted by " + amount(rate) + " an hour and turned by "
                + String.format(Locale.ROOT, "%.2f", Math.abs(rate.rotationDegPerHour())) + "° an hour.";
    }

    private static String amount(DriftRate rate) {
        Optional<Double> arcsec = rate.xArcsecPerMinute().isPresent()
                ? Optional.of(Math.hypot(
                        rate.xArcsecPerMinute().getAsDouble(),
                        rate.yArcsecPerMinute().getAsDouble()))
                : Optional.empty();
        double px = MINUTES * Math.hypot(rate.xPxPerMinute(), rate.yPxPerMinute());
        String pixels = Numerals.fixed(px, 1) + " px";
        return arcsec.map(a -> Numerals.fixed(MINUTES * a, 1) + " arcsec (" + pixels + ")")
                .orElse(pixels);
    }
}
