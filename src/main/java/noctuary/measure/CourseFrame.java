package noctuary.measure;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One counted frame in the course of a night.
 *
 * @param name as in {@link FrameSheet}
 * @param taken start of the exposure
 * @param fwhmErrorPx standard error of {@code fwhmPx}
 * @param elongation what the ellipticities of the stars have in common
 * @param backgroundNoise standard deviation a pixel, ADU
 * @param starsFound whether their shape was measured or not
 * @param airmass of the header, else from the site and the coordinates
 * @param field against the reference frame of the night; absent when the stars do not match
 */
public record CourseFrame(
        String name,
        Instant taken,
        String filter,
        OptionalDouble exposureSeconds,
        OptionalDouble fwhmPx,
        OptionalDouble fwhmErrorPx,
        OptionalDouble fwhmArcsec,
        OptionalDouble ellipticity,
        Optional<Elongation> elongation,
        OptionalDouble backgroundLevel,
        OptionalDouble backgroundNoise,
        int starsFound,
        OptionalDouble airmass,
        OptionalDouble relativeTransparency,
        OptionalDouble transparencyError,
        int commonStars,
        Optional<FieldMove> field,
        Optional<DimmedSide> dimmed) {

    /**
     * How the star field lies on the sensor against the reference frame.
     *
     * @param xPx way of the field's centre along +x
     * @param xArcsec the same on the sky; absent when the image scale is not known
     * @param rotationDeg of the field, from +x towards +y
     */
    public record FieldMove(
            double xPx, double yPx, OptionalDouble xArcsec, OptionalDouble yArcsec, double rotationDeg) {}
}
