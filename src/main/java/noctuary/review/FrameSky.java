package noctuary.review;

import java.util.OptionalDouble;

/**
 * The sky over one frame, at the middle of its exposure; absent where time, site or position is not known.
 *
 * @param sunAltitudeDeg of the centre, without refraction, as the Moon's
 * @param moonLit share of the disc that is lit, 0 to 1
 * @param moonDistanceDeg angle between Moon and target
 * @param moonMagnitudes by how much the Moon brightens a natural dark sky at the target; 0 with the Moon down
 * @param airmass of the target: of a single frame's header, else computed
 */
public record FrameSky(
        OptionalDouble sunAltitudeDeg,
        OptionalDouble moonAltitudeDeg,
        OptionalDouble moonLit,
        OptionalDouble moonDistanceDeg,
        OptionalDouble moonMagnitudes,
        OptionalDouble airmass) {
    static final FrameSky UNKNOWN = new FrameSky(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());

    /** The same sky with the airmass that a header tells. */
    FrameSky withAirmass(double told) {
        return new FrameSky(
                sunAltitudeDeg, moonAltitudeDeg, moonLit, moonDistanceDeg, moonMagnitudes, OptionalDouble.of(told));
    }
}
