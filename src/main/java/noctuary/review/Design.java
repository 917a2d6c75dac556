package noctuary.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import noctuary.stats.Block;
import noctuary.stats.ShiftTest;

/**
 * Which nights are compared with which. A night on both sides is a pair of its own; a target on both sides is a block, and
 * all other nights are one more. Nights at another site, or
 * through another filter if the measure follows it, never share a block. In that last block a measure that follows the target counts a target once, however many nights it had.
 *
 * @param nights units in blocks, one a night
 * @param blocks the same, targets merged
 */
record Design(List<List<Unit>> nights, List<List<Unit>> blocks) {
    /** Blocks must keep all of what the nights could tell without them, when the measure does not need them. */
    private static final double KEPT = 1 - 1e-9;

    /** And must still be able to give a p as small as this, with several measures in mind. */
    private static final double REACHED = 0.01;

    /**
     * Within targets when the measure follows the target, or when that costs nothing: each target on both sides, as with full
     * pairs, and in the same proportion. How the nights fell decides, not what they gave.
     */
    static Design of(Measure measure, List<Influence> apart, List<Unit> units, Merging merging) {
        Design within = strata(new Strata(apart, units, true), units);
        if (measure.follows(Influence.TARGET)) {
            return new Design(
                    within.nights,
                    within.nights.stream().map(b -> byTarget(b, merging)).toList());
        }
        Design across = strata(new Strata(apart, units, false), units);
        boolean free = shared(new Strata(apart, units, true), units)
                && within.weight() >= KEPT * across.weight()
                && within.smallestP() <= REACHED;
        return free ? within : across;
    }

    private static Design strata(Strata strata, List<Unit> units) {
        Map<String, List<Unit>> blocks = new TreeMap<>();
        grouped(units, strata::narrow)
                .values()
                .forEach(group -> blocks.computeIfAbsent(
                                bothSides(group) ? strata.narrow(group.get(0)) : strata.wide(group.get(0)),
                                k -> new ArrayList<>())
                        .addAll(group));
        List<List<Unit>> kept =
                blocks.values().stream().filter(Design::bothSides).toList();
        return new Design(kept, kept);
    }

    private static boolean shared(Strata strata, List<Unit> units) {
        return grouped(units, strata::narrow).values().stream().allMatch(Design::bothSides);
    }

    private static Map<String, List<Unit>> grouped(Collection<Unit> units, Function<Unit, String> key) {
        Map<String, List<Unit>> groups = new LinkedHashMap<>();
        units.forEach(u ->
                groups.computeIfAbsent(key.apply(u), k -> new ArrayList<>()).add(u));
        return groups;
    }

    /** One unit a target and side, when no target is on both sides. */
    private static List<Unit> byTarget(List<Unit> block, Merging merging) {
        boolean shared = block.stream()
                .filter(Unit::after)
                .anyMatch(a -> block.stream()
                        .anyMatch(b -> !b.after()
                                && b.night().target().equals(a.night().target())));
        if (shared) {
            return block;
        }
        return grouped(block, u -> u.after() + u.night().target()).values().stream()
                .map(group -> new Unit(
                        merging.average(group.stream().map(Unit::night).toList()),
                        group.get(0).after()))
                .toList();
    }

    private static boolean bothSides(List<Unit> units) {
        return units.stream().anyMatch(Unit::after) && !units.stream().allMatch(Unit::after);
    }

    /** Nights compared on a side. */
    int count(boolean after) {
        return (int) nights.stream()
                .flatMap(List::stream)
                .filter(u -> u.after() == after)
                .count();
    }

    /** Independent values on a side. */
    int values(boolean after) {
        return (int) units().filter(u -> u.after() == after).count();
    }

    int pairs() {
        return (int) blocks.stream().filter(b -> b.size() == 2).count();
    }

    Stream<Unit> units() {
        return blocks.stream().flatMap(List::stream);
    }

    /** Number of the block that holds each of the units, in their order. */
    int[] places() {
        return IntStream.range(0, blocks.size())
                .flatMap(i -> blocks.get(i).stream().mapToInt(unit -> i))
                .toArray();
    }

    /** The smallest p that these numbers allow; 1 without nights on both sides. */
    double smallestP() {
        return smallest(blocks);
    }

    /** The same if every night were independent. */
    double smallestPByNight() {
        return smallest(nights);
    }

    private static double smallest(List<List<Unit>> blocks) {
        return blocks.isEmpty() ? 1 : ShiftTest.smallestP(blocks(blocks, Scale.PLAIN));
    }

    private double weight() {
        return blocks(blocks, Scale.PLAIN).stream().mapToDouble(Block::weight).sum();
    }

    List<Block> blocks(Scale scale) {
        return blocks(blocks, scale);
    }

    private static List<Block> blocks(List<List<Unit>> units, Scale scale) {
        return units.stream()
                .map(b -> new Block(values(b, scale, false), values(b, scale, true)))
                .toList();
    }

    private static double[] values(List<Unit> block, Scale scale, boolean after) {
        return block.stream()
                .filter(u -> u.after() == after)
                .mapToDouble(u -> scale.of(u.night().value()))
                .toArray();
    }
}
