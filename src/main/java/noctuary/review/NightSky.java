package noctuary.review;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.stats.Robust;

/**
 * The sky of one night over one target: medians over the frames, and the dark hours there were.
 *
 * @param frames each frame's sky, in the order of the files
 * @param darkHours with the Sun more than 18° down; absent without the site's coordinates
 * @param moonlessHours of these, with the Moon down
 */
public record NightSky(List<FrameSky> frames, OptionalDouble darkHours, OptionalDouble moonlessHours) {
    public NightSky {
        frames = List.copyOf(frames);
    }

    public OptionalDouble airmass() {
        return median(FrameSky::airmass);
    }

    public OptionalDouble moonMagnitudes() {
        return median(FrameSky::moonMagnitudes);
    }

    public OptionalDouble moonAltitudeDeg() {
        return median(FrameSky::moonAltitudeDeg);
    }

    public OptionalDouble moonLit() {
        return median(FrameSky::moonLit);
    }

    public OptionalDouble moonDistanceDeg() {
        return median(FrameSky::moonDistanceDeg);
    }

    public OptionalDouble sunAltitudeDeg() {
        return median(FrameSky::sunAltitudeDeg);
    }

    private OptionalDouble median(Function<FrameSky, OptionalDouble> part) {
        double[] known = frames.stream()
                .map(part)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        return known.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(known));
    }
}
