package noctuary.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import noctuary.stars.KeptStars;
import noctuary.stars.Star;
import noctuary.stars.StarField;

/** A measurement without its stars, which are many and seldom wanted. */
record BareMeasurement(Measurement measurement, int stars, long measured) {
    static BareMeasurement of(Measurement whole) {
        Optional<StarField> field = whole.field();
        return new BareMeasurement(
                whole.with(field.map(f -> f.with(List.of()))),
                field.map(f -> f.stars().size()).orElse(0),
                field.map(StarField::measured).orElse(0L));
    }

    /** With stars that {@code source} gives once they are asked for. */
    Measurement whole(Supplier<List<Star>> source) {
        return measurement.with(
                measurement.field().map(f -> f.with(stars == 0 ? List.of() : new KeptStars(stars, measured, source))));
    }
}
