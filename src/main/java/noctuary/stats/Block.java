package noctuary.stats;

/**
 * Values that may be exchanged with each other if nothing changed, such as one target's nights.
 *
 * @param before values on the one side, at least one
 * @param after values on the other, at least one
 */
public record Block(double[] before, double[] after) {
    /** @throws IllegalArgumentException for an empty side */
    public Block {
        if (before.length == 0 || after.length == 0) {
            throw new IllegalArgumentException("a block needs values on both sides");
        }
        before = before.clone();
        after = after.clone();
    }

    int size() {
        return before.length + after.length;
    }

    boolean isPair() {
        return size() == 2;
    }

    /** What the block tells about a shift, in independent pairs of values times a half: m n / (m + n). */
    public double weight() {
        return (double) before.length * after.length / size();
    }

    /** Number of ways to choose its after side; infinite beyond what a double holds. */
    double relabellings() {
        double ways = 1;
        for (int i = 1; i <= after.length; i++) {
            ways = ways * (before.length + i) / i;
        }
        return Math.rint(ways);
    }
}
