package noctuary.stars;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import noctuary.image.Plane;

/** Finds peaks of the filtered plane above a multiple of its noise, tile by tile. */
final class Detector {
    private static final int SIDE = 512;

    private final Plane plane;
    private final Sampling sampling;
    private final BackgroundMesh mesh;
    private final PeakTest test;

    Detector(Plane plane, Sampling sampling, BackgroundMesh mesh, PeakTest test) {
        this.plane = plane;
        this.sampling = sampling;
        this.mesh = mesh;
        this.test = test;
    }

    int tiles() {
        return columns() * rows();
    }

    /** Detections of the chosen tiles, highest signal-to-noise ratio first. */
    List<Detection> find(IntPredicate chosen) {
        return IntStream.range(0, rows())
                .parallel()
                .mapToObj(row -> row(row, chosen))
                .flatMap(Collection::stream)
                .sorted(Comparator.comparingDouble(Detection::snr)
                        .reversed()
                        .thenComparingInt(Detection::y)
                        .thenComparingInt(Detection::x))
                .toList();
    }

    private List<Detection> row(int row, IntPredicate chosen) {
        FilteredTile tile = new FilteredTile(plane, sampling, mesh, test, Math.min(SIDE, plane.width()));
        int y = row * SIDE;
        return IntStream.range(0, columns())
                .filter(column -> chosen.test(row * columns() + column))
                .map(column -> column * SIDE)
                .mapToObj(x -> tile.search(x, y, Math.min(SIDE, plane.width() - x), Math.min(SIDE, plane.height() - y)))
                .flatMap(Collection::stream)
                .toList();
    }

    private int columns() {
        return (plane.width() + SIDE - 1) / SIDE;
    }

    private int rows() {
        return (plane.height() + SIDE - 1) / SIDE;
    }
}
