package noctuary.stars;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Chooses which detections are fitted: all of them while each cell of a grid over the field has few, else as many a
 * cell, evenly over its range of brightness.
 */
final class FairSample {
    private static final int SIDE = 6;

    private FairSample() {}

    /** Indices into detections (brightest first) that pass {@code eligible}, at most {@code most} in all. */
    static BitSet choose(List<Detection> detections, BitSet eligible, int width, int height, int most) {
        List<List<Integer>> cells = new ArrayList<>();
        for (int i = 0; i < SIDE * SIDE; i++) {
            cells.add(new ArrayList<>());
        }
        eligible.stream().forEach(i -> {
            Detection d = detections.get(i);
            cells.get(d.y() * SIDE / height * SIDE + d.x() * SIDE / width).add(i);
        });
        BitSet chosen = new BitSet();
        int bound = Math.max(1, most / (SIDE * SIDE));
        for (List<Integer> cell : cells) {
            int take = Math.min(bound, cell.size());
            for (int k = 0; k < take; k++) {
                chosen.set(cell.get((int) ((long) k * cell.size() / take)));
            }
        }
        return chosen;
    }
}
