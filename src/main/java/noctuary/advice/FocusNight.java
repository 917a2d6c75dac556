package noctuary.advice;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.measure.CourseFrame;
import noctuary.measure.FrameSheet;
import noctuary.measure.NightCourse;
import noctuary.stats.TheilSen;

/**
 * Star width against temperature in one night. Out of focus a star widens in squares: w² = w₀² + (k ΔT)², with ΔT since
 * the first frame; k² is the Theil-Sen slope of w² over ΔT², widths brought to airmass 1.
 *
 * @param degrees the temperature went from the first frame to the last
 * @param degreesPerHour slope over the night, negative while it cools
 * @param earlyPerHour the same over the first half of the frames
 * @param latePerHour the same over the second half
 * @param growing whether the night's course found the stars widening
 * @param degreesFor10Percent after which the stars are a tenth wider; absent where they do not clearly widen
 * @param least the same at the upper end of the slope's 95 % interval
 */
public record FocusNight(
        String slug,
        LocalDate night,
        int frames,
        double degrees,
        double degreesPerHour,
        double earlyPerHour,
        double latePerHour,
        boolean growing,
        OptionalDouble degreesFor10Percent,
        OptionalDouble least) {
    /** 1.1² - 1. */
    private static final double TENTH_IN_SQUARES = 0.21;

    private static final int FEWEST = 4;

    static Optional<FocusNight> of(String slug, NightCourse course, List<FrameSheet> sheets) {
        List<CourseFrame> frames = Drift.widths(course).stream()
                .filter(f -> temperature(f, sheets).isPresent())
                .toList();
        if (frames.size() < FEWEST) {
            return Optional.empty();
        }
        double[] celsius = frames.stream()
                .mapToDouble(f -> temperature(f, sheets).getAsDouble())
                .toArray();
        double[] hours = Drift.hours(frames);
        boolean growing = course.observations().stream().anyMatch(o -> o.id().equals("focus-drift"));
        double[] squares = IntStream.range(0, celsius.length)
                .mapToDouble(i -> (celsius[i] - celsius[0]) * (celsius[i] - celsius[0]))
                .toArray();
        double[] widths = Drift.atZenith(frames);
        TheilSen line = TheilSen.fit(
                squares,
                IntStream.range(0, widths.length)
                        .mapToDouble(i -> widths[i] * widths[i])
                        .toArray());
        boolean told = growing && line.rises() && line.intercept() > 0;
        return Optional.of(new FocusNight(
                slug,
                course.night(),
                frames.size(),
                celsius[celsius.length - 1] - celsius[0],
                TheilSen.fit(hours, celsius).slope(),
                slope(hours, celsius, 0, (celsius.length + 1) / 2),
                slope(hours, celsius, celsius.length / 2, celsius.length),
                growing,
                told ? OptionalDouble.of(tenth(line.intercept(), line.slope())) : OptionalDouble.empty(),
                told ? OptionalDouble.of(tenth(line.intercept(), line.high())) : OptionalDouble.empty()));
    }

    private static double slope(double[] hours, double[] celsius, int from, int to) {
        return TheilSen.fit(Arrays.copyOfRange(hours, from, to), Arrays.copyOfRange(celsius, from, to))
                .slope();
    }

    private static double tenth(double squaredWidth, double slope) {
        return Math.sqrt(TENTH_IN_SQUARES * squaredWidth / slope);
    }

    private static OptionalDouble temperature(CourseFrame frame, List<FrameSheet> sheets) {
        return sheets.stream()
                .filter(s -> s.name().equals(frame.name()))
                .flatMap(s -> s.header().stream())
                .flatMap(h -> temperature(h).stream())
                .mapToDouble(c -> c)
                .findFirst();
    }

    /** Of the focuser, else of the air. */
    static Optional<Double> temperature(FrameHeader header) {
        return header.focuserTemperatureC().or(header::ambientTemperatureC).map(Cited::value);
    }
}
