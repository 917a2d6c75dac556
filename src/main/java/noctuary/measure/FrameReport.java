package noctuary.measure;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonValue;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import noctuary.noise.NoiseReport;
import noctuary.stars.Zone;

/**
 * One file measured: the object that {@code measure --json} prints, its keys the components' names.
 *
 * @param noise for the pages and downloads; the terminal's keys are settled
 */
public record FrameReport(
        String file,
        Kind kind,
        OptionalInt width,
        OptionalInt height,
        OptionalInt planes,
        Optional<String> mosaic,
        Optional<String> object,
        Optional<Instant> taken,
        OptionalDouble exposureSeconds,
        OptionalInt exposures,
        Optional<String> filter,
        OptionalDouble gain,
        OptionalDouble sensorTemperatureC,
        Optional<Scale> imageScale,
        Optional<Field> field,
        Optional<Sky> background,
        Optional<Stars> stars,
        List<Zone> zones,
        @JsonIgnore Optional<Noise> noise,
        Optional<Blemishes> defects,
        List<Trouble> problems) {

    public enum Kind {
        SINGLE,
        STACK,
        PICTURE;

        /** The word used in JSON. */
        @JsonValue
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** @param from {@code wcs}, {@code header optics} or {@code rig} */
    public record Scale(double arcsecPerPx, String from) {}

    public record Field(double widthDeg, double heightDeg) {}

    public record Sky(double level, double noise, OptionalDouble gradientPercent) {}

    /**
     * @param sigma of a pixel on quiet parts of the field, ADU
     * @param ofNeighbours as the differences of neighbouring pixels tell it, ADU
     * @param correlation as {@link NoiseReport#correlation}
     * @param electrons sigma in electrons; absent for stacks and without gain
     */
    public record Noise(
            double sigma,
            OptionalDouble ofNeighbours,
            OptionalDouble correlation,
            OptionalDouble electrons,
            List<NoiseReport.Scale> scales,
            List<NoiseReport.Zone> zones) {}

    /** 16th, 50th and 84th percentiles. */
    public record Spread(OptionalDouble median, OptionalDouble low, OptionalDouble high) {}

    public record Stars(
            int found,
            int measured,
            int saturated,
            Spread fwhmPx,
            Spread fwhmArcsec,
            Spread ellipticity,
            Spread halfFluxRadiusPx,
            Middle moffatBeta) {}

    public record Middle(OptionalDouble median) {}

    public record Blemishes(
            OptionalDouble hotPixels,
            OptionalDouble rowBanding,
            OptionalDouble columnBanding,
            OptionalDouble driftStreak,
            OptionalDouble clippedBlackPercent,
            OptionalDouble clippedWhitePercent) {}

    public record Trouble(String where, String what, String hint) {}
}
