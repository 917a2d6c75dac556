package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ShiftTestTest {
    /** Efron &amp; Tibshirani, An Introduction to the Bootstrap, table 2.1; 3184 of C(16, 7), counted with scipy. */
    @Test
    void survivalOfMice() {
        double[] treated = {94, 197, 16, 38, 99, 141, 23};
        double[] control = {52, 104, 146, 10, 51, 30, 40, 27, 46};
        ShiftTest test = ShiftTest.of(List.of(new Block(control, treated)), 0.95, 1);
        assertThat(test.shift()).isCloseTo(30.634921, within(1e-6));
        assertThat(test.pOfSize()).isCloseTo(3184 / 11440.0, within(1e-12));
        assertThat(test.relabellings()).isEqualTo(11440);
        assertThat(test.exact()).isTrue();
    }

    /** 10 of 462, counted with scipy 1.10.1. */
    @Test
    void sixNightsAgainstFive() {
        ShiftTest test = ShiftTest.of(List.of(new Block(Samples.NIGHTS_BEFORE, Samples.NIGHTS_AFTER)), 0.95, 1);
        assertThat(test.pOfSize()).isCloseTo(10 / 462.0, within(1e-12));
        assertThat(test.shift()).isCloseTo(-0.410333, within(1e-6));
        assertThat(test.high()).isLessThan(0);
        assertThat(test.smallestP()).isCloseTo(2 / 462.0, within(1e-15));
    }

    /** Student's sleep data: 4 of 1024 sign flips, counted with scipy 1.10.1. */
    @Test
    void signFlipsArePairs() {
        ShiftTest test = ShiftTest.of(pairs(Samples.SLEEP_ONE, Samples.SLEEP_TWO), 0.95, 1);
        assertThat(test.pOfSize()).isCloseTo(4 / 1024.0, within(1e-12));
        assertThat(test.shift()).isCloseTo(1.58, within(1e-12));
        assertThat(test.relabellings()).isEqualTo(1024);
    }

    /** Nothing differs, so every relabelling is as extreme: listed and counted alike. */
    @Test
    void valuesAllAlikeTellNothing() {
        for (int nights : new int[] {3, 12}) {
            ShiftTest test = ShiftTest.of(List.of(new Block(new double[nights], new double[nights])), 0.95, 1);
            assertThat(test.p()).isEqualTo(1);
            assertThat(test.pOfSize()).isEqualTo(1);
            assertThat(test.low()).isEqualTo(0);
        }
    }

    /** By definition of the interval: shifted by just less than an end, the test is not yet at the level; by more, it is. */
    @Test
    void theIntervalIsTheTestTurnedRound() {
        List<Block> blocks = List.of(
                new Block(new double[] {1, 3, 4.5, 7}, new double[] {2, 6, 8.25}),
                new Block(new double[] {11, 14.2}, new double[] {12.5, 15.5, 16.1}));
        double level = 1 - 2 * 4 / 350.0;
        ShiftTest test = ShiftTest.of(blocks, level, 1);
        assertThat(test.relabellings()).isEqualTo(350);
        assertThat(test.coverage()).isCloseTo(level, within(1e-12));
        double tooFar = 2 * 4 / 350.0;
        assertThat(pAt(blocks, test.low() - 1e-6)).isLessThanOrEqualTo(tooFar + 1e-12);
        assertThat(pAt(blocks, test.low() + 1e-6)).isGreaterThan(tooFar + 1e-12);
        assertThat(pAt(blocks, test.high() - 1e-6)).isGreaterThan(tooFar + 1e-12);
        assertThat(pAt(blocks, test.high() + 1e-6)).isLessThanOrEqualTo(tooFar + 1e-12);
    }

    @Test
    void blocksRemoveWhatTheyDifferBy() {
        List<Block> near = List.of(
                new Block(new double[] {1, 3, 4.5}, new double[] {2, 6}),
                new Block(new double[] {1.5}, new double[] {2.5}));
        List<Block> far = List.of(near.get(0), new Block(new double[] {101.5}, new double[] {102.5}));
        assertThat(ShiftTest.of(far, 0.95, 1).shift())
                .isCloseTo(ShiftTest.of(near, 0.95, 1).shift(), within(1e-12));
        assertThat(HodgesLehmann.shift(far)).isCloseTo(HodgesLehmann.shift(near), within(1e-12));
    }

    /** A constant block multiplies the relabellings and changes nothing: listed, counted by halves, and drawn. */
    @Test
    void listCountAndSelectionAgree() {
        double[] before = new SplittableRandom(3).doubles(8).toArray();
        double[] after = new SplittableRandom(4).doubles(8, 0.2, 1.2).toArray();
        Block block = new Block(before, after);
        ShiftTest listed = ShiftTest.of(List.of(block), 0.95, 1);
        ShiftTest counted = ShiftTest.of(List.of(block, new Block(new double[3], new double[3])), 0.95, 1);
        ShiftTest drawn = ShiftTest.of(List.of(block, new Block(new double[9], new double[9])), 0.95, 1);
        assertThat(listed.exact()).isTrue();
        assertThat(counted.exact()).isTrue();
        assertThat(counted.relabellings()).isEqualTo(12_870 * 20);
        assertThat(counted.p()).isCloseTo(listed.p(), within(1e-12));
        assertThat(counted.pOfSize()).isCloseTo(listed.pOfSize(), within(1e-12));
        assertThat(drawn.exact()).isFalse();
        assertThat(drawn.relabellings()).isEqualTo(10_000);
        assertThat(drawn.p()).isCloseTo(listed.p(), within(5 * Math.sqrt(listed.p() / 10_000)));
    }

    /** Of one block, ends and p of the list itself. */
    @Test
    void countingByHalvesGivesTheListsInterval() {
        double[] before = new SplittableRandom(5).doubles(7).toArray();
        double[] after = new SplittableRandom(6).doubles(6, 0.3, 1.3).toArray();
        List<Block> blocks = List.of(new Block(before, after), new Block(new double[] {1, 2}, new double[] {3}));
        Relabellings list = Relabellings.all(blocks);
        Halves halves = Halves.of(blocks).orElseThrow();
        assertThat(halves.count()).isEqualTo(list.count());
        for (double rank : new double[] {1, 2, 17, 129, 1000, 5000}) {
            assertThat(halves.typical(rank)).isCloseTo(list.typical(rank), within(1e-12));
        }
        for (double loss = -3; loss < 3; loss += 0.37) {
            assertThat(halves.atMost(loss)).isEqualTo(list.atMost(loss));
        }
        assertThat(halves.largest()).isCloseTo(list.largest(), within(1e-12));
    }

    /**
     * Darwin's maize, in eighths of an inch: of 2<sup>15</sup> changes of sign 863 give a total of 314 or more (Fisher
     * 1935, The Design of Experiments, section 21; values from memory, counted again with numpy 2.4).
     */
    @Test
    void darwinsMaize() {
        ShiftTest test = ShiftTest.of(pairs(new double[15], Samples.MAIZE_EIGHTHS), 0.95, 1);
        assertThat(test.exact()).isTrue();
        assertThat(test.relabellings()).isEqualTo(32_768);
        assertThat(test.pOfSize()).isCloseTo(2 * 863 / 32_768.0, within(1e-12));
        assertThat(test.p()).isCloseTo(2 * 863 / 32_768.0, within(1e-12));
    }

    @Test
    void theEstimatesOfOneBlockAndOfPairsAreThoseOfTheRankTests() {
        double[] before = Samples.NIGHTS_BEFORE;
        double[] after = Samples.NIGHTS_AFTER;
        assertThat(HodgesLehmann.shift(List.of(new Block(before, after))))
                .isCloseTo(RankSum.of(after, before, 0.95).shift(), within(1e-12));
        double[] d = Samples.differences(Samples.SLEEP_TWO, Samples.SLEEP_ONE);
        assertThat(HodgesLehmann.shift(pairs(Samples.SLEEP_ONE, Samples.SLEEP_TWO)))
                .isCloseTo(SignedRank.of(d, 0.95).shift(), within(1e-12));
    }

    private static List<Block> pairs(double[] before, double[] after) {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < before.length; i++) {
            blocks.add(new Block(new double[] {before[i]}, new double[] {after[i]}));
        }
        return blocks;
    }

    private static double pAt(List<Block> blocks, double shift) {
        List<Block> moved = blocks.stream()
                .map(b -> new Block(
                        b.before(), Arrays.stream(b.after()).map(v -> v - shift).toArray()))
                .toList();
        return ShiftTest.of(moved, 0.95, 1).p();
    }
}
