package noctuary.stars;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Mosaic;
import noctuary.image.Plane;

/**
 * Everything the stars of one plane tell. Summaries are over the measured stars; absent, with {@code whyNot} saying
 * why, when there are none to trust.
 *
 * @param stars all found, brightest first
 * @param ellipticity freed of the bias that noise always adds
 * @param zones nine, row by row
 * @param model of the width over the field, from ten stars on
 * @param whyNot a sentence when the shape summaries are absent
 */
public record StarField(
        Background background,
        List<Star> stars,
        int saturated,
        Optional<Summary> fwhmPx,
        Optional<Summary> ellipticity,
        Optional<Summary> halfFluxRadiusPx,
        OptionalDouble moffatBeta,
        List<Zone> zones,
        Optional<FieldModel> model,
        Optional<String> whyNot) {
    public StarField {
        stars = stars instanceof KeptStars ? stars : List.copyOf(stars);
        zones = List.copyOf(zones);
    }

    /** How the plane was made, as far as measuring must know. */
    public record Conditions(Optional<Mosaic> mosaic, OptionalDouble saturationAdu) {
        public static final Conditions PLAIN = new Conditions(Optional.empty(), OptionalDouble.empty());
    }

    /** Measures a plane; a colour mosaic is measured on its green pixels and scaled back to sensor pixels. */
    public static StarField measure(Plane plane, Conditions conditions) {
        return new Measurement(plane, conditions).run();
    }

    /** The same field with another list of its stars. */
    public StarField with(List<Star> others) {
        return new StarField(
                background, others, saturated, fwhmPx, ellipticity, halfFluxRadiusPx, moffatBeta, zones, model, whyNot);
    }

    public long measured() {
        return stars instanceof KeptStars kept
                ? kept.measured()
                : stars.stream().filter(Star::measured).count();
    }
}
