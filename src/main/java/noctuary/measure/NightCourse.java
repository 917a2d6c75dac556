package noctuary.measure;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The counted frames of one night of an entry, by time.
 *
 * @param reference name of the frame with the most stars, against which the fields are laid; each filter has its own
 *     for transparency
 * @param drift of the field through the night; absent with fewer than four matched frames
 * @param observations what the frames together look like; none with fewer than four frames
 */
public record NightCourse(
        LocalDate night,
        String reference,
        List<CourseFrame> frames,
        Optional<DriftRate> drift,
        List<Observation> observations) {
    public NightCourse {
        frames = List.copyOf(frames);
        observations = List.copyOf(observations);
    }

    /** Robust slopes of the field's place over time; arcsec absent when the image scale is not known. */
    public record DriftRate(
            double xPxPerMinute,
            double yPxPerMinute,
            OptionalDouble xArcsecPerMinute,
            OptionalDouble yArcsecPerMinute,
            double rotationDegPerHour) {}

    /** The frame of that name. */
    public Optional<CourseFrame> frame(String name) {
        return frames.stream().filter(f -> f.name().equals(name)).findFirst();
    }
}
