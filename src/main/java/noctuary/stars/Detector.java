package noctuary.stars;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import noctuary.image.Plane;

/** Finds peaks of the filtered plane above a multiple of its noise, tile by tile. */
final class Detector {
    private static final int SIDE = 512;
    /** Pixels around a pair of pixels within which its peak lies; even, so that the same rows make the mean as in the whole. */
    private static final int AROUND = 2;

    /**
     * Pixels that looking near one place costs, with what the filter reaches beyond. Where places crowd closer, filtering
     * every pixel costs no more and misses no close pair.
     */
    private static final long ROOM = 20L * 20;

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
        List<Detection> found = IntStream.range(0, tiles())
                .parallel()
                .filter(chosen)
                .mapToObj(this::tile)
                .flatMap(Collection::stream)
                .toList();
        Set<Long> seen = new HashSet<>();
        return found.stream()
                .filter(d -> seen.add((long) d.y() * plane.width() + d.x()))
                .sorted(Comparator.comparingDouble(Detection::snr)
                        .reversed()
                        .thenComparingInt(Detection::y)
                        .thenComparingInt(Detection::x))
                .toList();
    }

    private List<Detection> tile(int index) {
        int x = index % columns() * SIDE;
        int y = index / columns() * SIDE;
        int width = Math.min(SIDE, plane.width() - x);
        int height = Math.min(SIDE, plane.height() - y);
        boolean wide = sampling.all() && test.filter().fwhm() >= Scout.NARROWEST && Math.min(width, height) > 1;
        List<int[]> places = wide ? new Scout(plane, mesh, test, width).places(x, y, width, height) : List.of();
        boolean apart = places.size() * ROOM < (long) width * height;
        return wide && apart
                ? near(places)
                : new FilteredTile(plane, sampling, mesh, test, width).search(x, y, width, height);
    }

    /** Those near the places that the scout named; one may be found from two of them. */
    private List<Detection> near(List<int[]> places) {
        FilteredTile tile = new FilteredTile(plane, sampling, mesh, test, 2 * AROUND + 2);
        List<Detection> found = new ArrayList<>();
        for (int[] place : places) {
            int left = Math.max(0, place[0] - AROUND);
            int top = Math.max(0, place[1] - AROUND);
            int right = Math.min(plane.width(), place[0] + 2 + AROUND);
            int bottom = Math.min(plane.height(), place[1] + 2 + AROUND);
            found.addAll(tile.search(left, top, right - left, bottom - top));
        }
        return found;
    }

    private int columns() {
        return (plane.width() + SIDE - 1) / SIDE;
    }

    private int rows() {
        return (plane.height() + SIDE - 1) / SIDE;
    }
}
