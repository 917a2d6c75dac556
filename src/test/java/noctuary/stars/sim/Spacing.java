package noctuary.stars.sim;

import java.util.ArrayList;
import java.util.List;

/** Keeps places apart, with a grid so that thousands are cheap. */
final class Spacing {
    private final double apart;
    private final int columns;
    private final List<List<double[]>> cells = new ArrayList<>();

    Spacing(int width, int height, double apart) {
        this.apart = Math.max(1, apart);
        columns = (int) (width / this.apart) + 3;
        int rows = (int) (height / this.apart) + 3;
        for (int i = 0; i < columns * rows; i++) {
            cells.add(new ArrayList<>());
        }
    }

    boolean take(double x, double y) {
        int column = (int) ((x + 1) / apart) + 1;
        int row = (int) ((y + 1) / apart) + 1;
        for (int j = -1; j <= 1; j++) {
            for (int i = -1; i <= 1; i++) {
                int cell = (row + j) * columns + column + i;
                if (cell >= 0 && cell < cells.size() && near(cells.get(cell), x, y)) {
                    return false;
                }
            }
        }
        cells.get(Math.min(cells.size() - 1, row * columns + column)).add(new double[] {x, y});
        return true;
    }

    private boolean near(List<double[]> places, double x, double y) {
        return places.stream().anyMatch(p -> Math.hypot(p[0] - x, p[1] - y) < apart);
    }
}
