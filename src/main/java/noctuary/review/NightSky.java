package noctuary.review;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.stats.Robust;

/**
 * The sky of one night over one target: medians over the frames, as {@link FrameSky} tells them, and the dark hours there
 * were.
 *
 * @param darkHours with the Sun more than 18° down; absent without the site's coordinates
 * @param moonlessHours of these, with the Moon down
 */
public record NightSky(
        OptionalDouble airmass,
        OptionalDouble moonMagnitudes,
        OptionalDouble moonAltitudeDeg,
        OptionalDouble moonLit,
        OptionalDouble moonDistanceDeg,
        OptionalDouble sunAltitudeDeg,
        OptionalDouble darkHours,
        OptionalDouble moonlessHours) {

    static NightSky of(List<FrameSky> frames, OptionalDouble darkHours, OptionalDouble moonlessHours) {
        return new NightSky(
                median(frames, FrameSky::airmass),
                median(frames, FrameSky::moonMagnitudes),
                median(frames, FrameSky::moonAltitudeDeg),
                median(frames, FrameSky::moonLit),
                median(frames, FrameSky::moonDistanceDeg),
                median(frames, FrameSky::sunAltitudeDeg),
                darkHours,
                moonlessHours);
    }

    private static OptionalDouble median(List<FrameSky> frames, Function<FrameSky, OptionalDouble> part) {
        double[] known = frames.stream()
                .map(part)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        return known.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(known));
    }
}
