package noctuary.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Every pair of triangles alike proposes a transform; true pairs propose the same one. Proposals are counted in cells
 * of scale, rotation, mirroring and where the middle of one field comes to lie in the other.
 */
final class Votes {
    /** Scale ratios sought, with a margin for noise. */
    private static final double LARGEST_SCALE = 5.5;

    private static final double SCALE_CELL = 0.08;
    private static final double ANGLE_CELL = Math.toRadians(5);
    private static final double SHIFT_CELLS = 24;
    /** Cells are told apart by this many values of a hash; two that collide do no harm. */
    private static final int SLOTS = 1 << 18;
    /** Beyond so many proposals the rest is left out: it would cost time and tell nothing new. */
    private static final int MOST_PROPOSALS = 2_000_000;
    /** Cells looked at, most votes first. */
    private static final int CELLS_TRIED = 60;

    private static final int FEWEST_VOTES = 2;

    private final Points a;
    private final Points b;
    private final double middleX;
    private final double middleY;
    private final double shiftCell;
    private final int[] counts = new int[SLOTS];
    private final IntList proposals = new IntList();

    Votes(Points a, Points b) {
        this.a = a;
        this.b = b;
        middleX = (a.minX + a.maxX) / 2;
        middleY = (a.minY + a.maxY) / 2;
        shiftCell = Math.max(1e-9, b.diagonal() / SHIFT_CELLS);
    }

    /** Transforms fitted to the fullest cells, most votes first. */
    List<Similarity> proposals(Triangles ofA, Triangles ofB) {
        ShapeIndex index = new ShapeIndex(ofB);
        for (int i = 0; i < ofA.size(); i++) {
            int triangle = i;
            index.alike(ofA.ratioB[i], ofA.ratioC[i], ofA.error[i], other -> vote(ofA, triangle, ofB, other));
        }
        int[] slots = fullest();
        Ballot[] ballots = new Ballot[slots.length];
        int[] rankOfSlot = new int[SLOTS];
        for (int rank = 0; rank < slots.length; rank++) {
            ballots[rank] = new Ballot(a, b);
            rankOfSlot[slots[rank]] = rank + 1;
        }
        for (int p = 0; p < proposals.size(); p += 3) {
            int rank = rankOfSlot[proposals.get(p + 2)];
            if (rank > 0) {
                ballots[rank - 1].add(ofA, proposals.get(p), ofB, proposals.get(p + 1));
            }
        }
        List<Similarity> fitted = new ArrayList<>();
        Arrays.stream(ballots).forEach(ballot -> ballot.fit().ifPresent(fitted::add));
        return fitted;
    }

    private void vote(Triangles ofA, int i, Triangles ofB, int j) {
        if (proposals.size() >= 3 * MOST_PROPOSALS) {
            return;
        }
        boolean mirrored = ofA.counterClockwise[i] != ofB.counterClockwise[j];
        Similarity s = TrianglePair.transform(a, ofA, i, b, ofB, j, mirrored);
        double scale = s.scale();
        if (!(scale < LARGEST_SCALE && scale > 1 / LARGEST_SCALE)) {
            return;
        }
        int slot = slot(s, scale);
        counts[slot]++;
        proposals.add(i);
        proposals.add(j);
        proposals.add(slot);
    }

    private int slot(Similarity s, double scale) {
        long key = s.mirrored() ? 1 : 0;
        key = 1_000_003 * key + Math.round(Math.log(scale) / SCALE_CELL);
        key = 1_000_003 * key + Math.floorMod(Math.round(Math.atan2(s.im(), s.re()) / ANGLE_CELL), 72);
        key = 1_000_003 * key + Math.round(s.toX(middleX, middleY) / shiftCell);
        key = 1_000_003 * key + Math.round(s.toY(middleX, middleY) / shiftCell);
        key *= 0x9E3779B97F4A7C15L;
        return (int) (key >>> 46);
    }

    /** The slots with most votes, fullest first, equal ones by number. */
    private int[] fullest() {
        long[] ranked = new long[SLOTS];
        int used = 0;
        for (int slot = 0; slot < SLOTS; slot++) {
            if (counts[slot] >= FEWEST_VOTES) {
                ranked[used++] = -((long) counts[slot] << 20) + slot;
            }
        }
        Arrays.sort(ranked, 0, used);
        return Arrays.stream(ranked, 0, Math.min(used, CELLS_TRIED))
                .mapToInt(r -> (int) (r & (1 << 20) - 1))
                .toArray();
    }
}
