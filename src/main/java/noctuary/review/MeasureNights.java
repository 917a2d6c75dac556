package noctuary.review;

import java.util.List;

/**
 * One measure's nights on either side of a change.
 *
 * @param primary named beforehand as the one that decides; the others are exploratory
 */
public record MeasureNights(Measure measure, boolean primary, List<NightValue> before, List<NightValue> after) {
    public MeasureNights {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }
}
