package noctuary.stars;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;

/** Finds which detections lie near a place, by a grid of buckets. */
final class Neighbours {
    private final List<Detection> detections;
    private final double side;
    private final int columns;
    private final int rows;
    private final List<List<Integer>> buckets = new ArrayList<>();

    Neighbours(List<Detection> detections, int width, int height, double radius) {
        this.detections = detections;
        this.side = Math.max(4, radius);
        this.columns = (int) (width / side) + 1;
        this.rows = (int) (height / side) + 1;
        for (int i = 0; i < columns * rows; i++) {
            buckets.add(new ArrayList<>(2));
        }
        for (int i = 0; i < detections.size(); i++) {
            Detection d = detections.get(i);
            buckets.get((int) (d.y() / side) * columns + (int) (d.x() / side)).add(i);
        }
    }

    /** Indices of all others within {@code radius} (at most the one given on making) of a detection. */
    void forEachNear(int index, double radius, IntConsumer action) {
        Detection centre = detections.get(index);
        int column = (int) (centre.x() / side);
        int row = (int) (centre.y() / side);
        for (int j = Math.max(0, row - 1); j <= Math.min(rows - 1, row + 1); j++) {
            for (int i = Math.max(0, column - 1); i <= Math.min(columns - 1, column + 1); i++) {
                for (int other : buckets.get(j * columns + i)) {
                    Detection d = detections.get(other);
                    double dx = d.centreX() - centre.centreX();
                    double dy = d.centreY() - centre.centreY();
                    if (other != index && dx * dx + dy * dy <= radius * radius) {
                        action.accept(other);
                    }
                }
            }
        }
    }
}
