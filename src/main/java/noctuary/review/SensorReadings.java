package noctuary.review;

import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.measure.FrameReport.Blemishes;
import noctuary.measure.FrameSheet;

/** What is wrong with the pixels of a night's single exposures. */
final class SensorReadings {
    private static final double MILLION = 1e6;
    private static final String NOTHING = "it could not be looked for";

    private SensorReadings() {}

    /** Of a million pixels. */
    static Reading hotPixels(EntryNight night) {
        return Readings.ofSingles(night, NOTHING, (f, s) -> {
            double pixels = (double) f.measurement().width() * f.measurement().height();
            return scaled(blemish(f, Blemishes::hotPixels), MILLION / pixels);
        });
    }

    static Reading rowBanding(EntryNight night) {
        return electrons(night, Blemishes::rowBanding);
    }

    static Reading columnBanding(EntryNight night) {
        return electrons(night, Blemishes::columnBanding);
    }

    /** Of stacks too: it is there that they show. */
    static Reading streaks(EntryNight night) {
        return Readings.median(night, NOTHING, (f, s) -> blemish(f, Blemishes::driftStreak));
    }

    private static Reading electrons(EntryNight night, Function<Blemishes, OptionalDouble> part) {
        return Readings.ofSingles(
                night,
                "the gain is not known",
                (f, s) -> f.report().gain().isPresent()
                        ? scaled(blemish(f, part), f.report().gain().getAsDouble())
                        : OptionalDouble.empty());
    }

    private static OptionalDouble blemish(FrameSheet file, Function<Blemishes, OptionalDouble> part) {
        return file.report().defects().map(part).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : OptionalDouble.empty();
    }
}
