package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/** Stretches put into as few rows as keep them apart, each into the first row with room. */
final class Rows {
    private final double gap;
    private final List<List<double[]>> rows = new ArrayList<>();

    Rows(double gap) {
        this.gap = gap;
    }

    /** The row, from 0, that took the stretch. */
    int place(double from, double to) {
        int row = 0;
        while (row < rows.size() && taken(rows.get(row), from, to)) {
            row++;
        }
        if (row == rows.size()) {
            rows.add(new ArrayList<>());
        }
        rows.get(row).add(new double[] {from, to});
        return row;
    }

    int count() {
        return rows.size();
    }

    private boolean taken(List<double[]> row, double from, double to) {
        return row.stream().anyMatch(other -> from < other[1] + gap && to > other[0] - gap);
    }
}
