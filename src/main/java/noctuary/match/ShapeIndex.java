package noctuary.match;

import java.util.function.IntConsumer;

/** Triangles by shape, for finding those nearly alike. */
final class ShapeIndex {
    private static final int CELLS = 100;

    private final Triangles triangles;
    private final int[] start = new int[CELLS * CELLS + 1];
    private final int[] members;

    ShapeIndex(Triangles triangles) {
        this.triangles = triangles;
        members = new int[triangles.size()];
        for (int i = 0; i < triangles.size(); i++) {
            start[cellOf(i) + 1]++;
        }
        for (int cell = 0; cell < CELLS * CELLS; cell++) {
            start[cell + 1] += start[cell];
        }
        int[] next = start.clone();
        for (int i = 0; i < triangles.size(); i++) {
            members[next[cellOf(i)]++] = i;
        }
    }

    /** Gives every triangle whose shape agrees within the errors of both. */
    void alike(float ratioB, float ratioC, float error, IntConsumer found) {
        float reach = error + 0.02f;
        int lastRow = cell(ratioB + reach);
        int firstColumn = cell(ratioC - reach);
        int lastColumn = cell(ratioC + reach);
        for (int row = cell(ratioB - reach); row <= lastRow; row++) {
            int end = start[row * CELLS + lastColumn + 1];
            for (int m = start[row * CELLS + firstColumn]; m < end; m++) {
                int i = members[m];
                float db = triangles.ratioB[i] - ratioB;
                float dc = triangles.ratioC[i] - ratioC;
                float allowed = error + triangles.error[i];
                if (db * db + dc * dc <= allowed * allowed) {
                    found.accept(i);
                }
            }
        }
    }

    private int cellOf(int triangle) {
        return cell(triangles.ratioB[triangle]) * CELLS + cell(triangles.ratioC[triangle]);
    }

    private static int cell(float ratio) {
        return Math.max(0, Math.min(CELLS - 1, (int) (ratio * CELLS)));
    }
}
