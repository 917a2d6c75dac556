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
                before.add(NightValue.of(pair.before(), 0, 1));
                after.add(NightValue.of(pair.after(), pair.deeperMag().getAsDouble(), 1));
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
}
