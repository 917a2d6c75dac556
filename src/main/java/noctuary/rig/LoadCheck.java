package noctuary.rig;

import java.util.Optional;
import java.util.OptionalDouble;

/** What stands on the mount against what it is rated for. */
final class LoadCheck {
    /** Share of the rating that imaging leaves unused; common practice, no source. */
    private static final double IMAGING_SHARE = 0.5;

    private LoadCheck() {}

    static Optional<Check> of(OptionalDouble payloadKg, OptionalDouble capacityKg) {
        if (payloadKg.isEmpty() || capacityKg.isEmpty() || capacityKg.getAsDouble() <= 0) {
            return Optional.empty();
        }
        double share = payloadKg.getAsDouble() / capacityKg.getAsDouble();
        return Optional.of(new Check(
                "mount-load",
                level(share),
                Words.say(
                        "The mount carries %s of the %s it is rated for (%s %%): %s",
                        Words.kg(payloadKg.getAsDouble()),
                        Words.kg(capacityKg.getAsDouble()),
                        Words.number(100 * share, 0),
                        verdict(share))));
    }

    private static Check.Level level(double share) {
        if (share > 1) {
            return Check.Level.WRONG;
        }
        return share > IMAGING_SHARE ? Check.Level.WARN : Check.Level.OK;
    }

    private static String verdict(double share) {
        return switch (level(share)) {
            case WRONG ->
                "overloaded. Take weight off before the next night; gears and balance suffer, and it may tip.";
            case WARN -> "more than half, where guiding often gets worse (common practice, no source).";
            case OK -> "within half of the rating, as is usual for imaging (common practice, no source).";
        };
    }
}
