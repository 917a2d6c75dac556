package noctuary.stars;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import noctuary.image.Plane;

/** Finds peaks of the filtered plane above a multiple of its noise, tile by tile. */
final class Detector {
    static final int TILE_WIDTH = 1024;
    static final int TILE_HEIGHT = 128;

    private final Plane plane;
    private final Sampling sampling;
    private final BackgroundMesh mesh;
    private final MatchedFilter filter;
    private final PointTest points;
    private final double sigmas;
    private final double photonSlope;

    Detector(
            Plane plane,
            Sampling sampling,
            BackgroundMesh mesh,
            MatchedFilter filter,
            PointTest points,
            double sigmas,
            double photonSlope) {
        this.plane = plane;
        this.sampling = sampling;
        this.mesh = mesh;
        this.filter = filter;
        this.points = points;
        this.sigmas = sigmas;
        this.photonSlope = photonSlope;
    }

    int tiles() {
        return columns() * rows();
    }

    /** Detections of the chosen tiles, highest signal-to-noise ratio first. */
    List<Detection> find(IntPredicate chosen) {
        int columns = columns();
        return IntStream.range(0, rows())
                .parallel()
                .mapToObj(row -> {
                    FilteredTile tile = new FilteredTile(plane, sampling, mesh, filter);
                    return IntStream.range(0, columns)
                            .filter(column -> chosen.test(row * columns + column))
                            .mapToObj(column -> peaks(tile, column, row))
                            .flatMap(Collection::stream)
                            .toList();
                })
                .flatMap(Collection::stream)
                .sorted(Comparator.comparingDouble(Detection::snr)
                        .reversed()
                        .thenComparingInt(Detection::y)
                        .thenComparingInt(Detection::x))
                .toList();
    }

    private List<Detection> peaks(FilteredTile tile, int column, int row) {
        int x0 = column * TILE_WIDTH;
        int y0 = row * TILE_HEIGHT;
        tile.load(x0, y0, Math.min(TILE_WIDTH, plane.width() - x0), Math.min(TILE_HEIGHT, plane.height() - y0));
        return tile.peaks(sigmas, photonSlope).stream()
                .filter(d -> points.star(tile.patch(d), d.x(), d.y()))
                .toList();
    }

    private int columns() {
        return (plane.width() + TILE_WIDTH - 1) / TILE_WIDTH;
    }

    private int rows() {
        return (plane.height() + TILE_HEIGHT - 1) / TILE_HEIGHT;
    }
}
