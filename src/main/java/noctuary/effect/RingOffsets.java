package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Where the pixels of the rings around a pixel stand in a square of pixels. */
final class RingOffsets {
    /** Up to here each distance is a ring of its own, from here on each rounded one. */
    private static final int APART = 3;

    private RingOffsets() {}

    /**
     * Index offsets, ring after ring.
     *
     * @param reach radius of the outermost, pixels
     * @param side of the square, whose pixels stand row after row
     */
    static int[][] of(int reach, int side) {
        SortedMap<Double, List<Integer>> rings = new TreeMap<>();
        for (int dy = -reach; dy <= reach; dy++) {
            for (int dx = -reach; dx <= reach; dx++) {
                double apart = Math.hypot(dx, dy);
                double ring = apart < APART ? apart : Math.rint(apart);
                if (ring <= reach) {
                    rings.computeIfAbsent(ring, r -> new ArrayList<>()).add(dy * side + dx);
                }
            }
        }
        return rings.values().stream()
                .map(ring -> ring.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }
}
