package noctuary.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Depth as a measure: of each target on both sides the earlier image stands at zero, the later at what it gained. */
final class DepthNights {
    private DepthNights() {}

    /** Pairs through the same filter; empty when there is none whose limits are known. */
    static Optional<MeasureNights> of(Change change, List<DepthPair> pairs) {
        List<NightValue> before = new ArrayList<>();
        List<NightValue> after = new ArrayList<>();
        for (DepthPair pair : pairs) {
            if (pair.sameFilter() && pair.deeperMag().isPresent()) {
                before.add(value(pair.before(), 0));
                after.add(value(pair.after(), pair.deeperMag().getAsDouble()));
            }
        }
        before.sort(Comparator.comparing(NightValue::night));
        after.sort(Comparator.comparing(NightValue::night));
        return before.isEmpty() ? Optional.empty() : Optional.of(new MeasureNights(Gauges.DEPTH, false, before, after));
    }

    static String why(List<DepthPair> pairs) {
        if (pairs.isEmpty()) {
            return "No target on both sides whose stars agree.";
        }
        return pairs.stream().noneMatch(DepthPair::sameFilter)
                ? "No target on both sides was taken through the same filter."
                : "Too few stars, or an unknown exposure, in the images of the same target.";
    }

    private static NightValue value(EntryNight night, double value) {
        return new NightValue(
                night.slug(),
                night.night(),
                night.target(),
                night.rig(),
                night.site(),
                night.filter(),
                value,
                1,
                night.sky().airmass(),
                night.sky().moonMagnitudes());
    }
}
