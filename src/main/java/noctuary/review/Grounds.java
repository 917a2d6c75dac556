package noctuary.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a verdict rests on.
 *
 * @param nightsBefore that were compared, one value each
 * @param pairs of them that stand beside each other: one night, or one target, on both sides
 * @param setAside nights that could not be compared with any on the other side
 * @param plain the shift as the nights stand, within targets where they pair; absent without nights on both sides
 * @param adjusted the same brought to equal conditions by regression; absent with too few nights for it
 * @param adjustedFor what the adjusted one takes out
 * @param decides whether the adjusted one gave the verdict, the measure following those conditions
 * @param against conditions in which before and after do not overlap
 * @param unknown conditions that the measure feels and that not every night knows
 * @param exact whether p compares all relabellings, not a random selection of them
 * @param cliff how far the sides lie apart, -1 when every night after lies below every night before, 1 above
 * @param detectable the smallest change that these nights would show in four reviews out of five, as a share of before
 * @param wanted nights still needed for a verdict
 */
public record Grounds(
        int nightsBefore,
        int nightsAfter,
        int pairs,
        int setAside,
        Optional<Shift> plain,
        Optional<Shift> adjusted,
        List<Influence> adjustedFor,
        boolean decides,
        List<Influence> against,
        List<Influence> unknown,
        boolean exact,
        OptionalDouble cliff,
        OptionalDouble detectable,
        Optional<Wanted> wanted) {
    public Grounds {
        adjustedFor = List.copyOf(adjustedFor);
        against = List.copyOf(against);
        unknown = List.copyOf(unknown);
    }
}
