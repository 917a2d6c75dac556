package noctuary.stars;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import noctuary.image.Plane;

/**
 * Looks over a plane at half its resolution for places where the filtered plane may peak above the threshold, so that
 * only those are filtered pixel by pixel. For one thread.
 *
 * <p>A star that reaches the threshold reaches {@value #SHARE} of it here, where a parabola through the neighbours stands
 * for the peak between them: of 4400 simulated stars up to a third above the threshold none of FWHM 3 px was missed, one
 * of 2.5 px, and fifteen of 2 px; {@link #NARROWEST} lies between the last two. Peaks that only
 * filtering pixel by pixel tells apart show as bulges in each other's slopes.
 */
final class Scout {
    /** Width that stars show, pixels, from which half the resolution is enough. */
    static final double NARROWEST = 2.4;

    private static final double SHARE = 0.68;
    /** A peak between four pairs shows at least this much of itself in each. */
    private static final float FIRST_LOOK = 0.75f;

    /** A pair of pixels widens a star by the variance of two places one apart, 1/4, on each axis: in FWHM squared. */
    private static final double PAIR = 0.25 * 8 * Math.log(2);

    private static final int BLOCK = 32;

    private final HalfRows rows;
    private final FilterRings rings;
    private final BlockMap thresholds;
    private final int[] high = new int[2 * BLOCK];
    private final List<int[]> places = new ArrayList<>();
    private final List<int[]> slopes = new ArrayList<>();
    private int x0;
    private int y0;
    private int width;
    private int height;

    /** @param widest tile, pixels */
    Scout(Plane plane, BackgroundMesh mesh, PeakTest test, int widest) {
        this.rows = new HalfRows(plane, mesh);
        double shown = test.filter().fwhm();
        MatchedFilter half = MatchedFilter.of(Math.sqrt(shown * shown + PAIR) / 2, Sampling.ALL);
        double sigmas = SHARE * test.sigmas() * half.norm();
        this.rings = new FilterRings(rows, half, (widest + 1) / 2);
        this.thresholds = new BlockMap(BLOCK, (x, y) -> sigmas * rows.noiseAt(x, y));
    }

    /**
     * The first pixels {x, y} of pairs of pixels near which to look, for a tile at even (x, y): the peaks, and then the
     * bulges of their slopes that are beside none.
     */
    List<int[]> places(int x, int y, int tileWidth, int tileHeight) {
        x0 = x / 2;
        y0 = y / 2;
        width = Math.min((tileWidth + 1) / 2, rows.width() - x0);
        height = Math.min((tileHeight + 1) / 2, rows.height() - y0);
        places.clear();
        slopes.clear();
        rings.begin(x0, y0, width);
        for (int row = -rings.margin(); row < height + rings.margin(); row++) {
            int scan = rings.read(row) - rings.halo();
            if (scan >= 0 && scan < height) {
                scan(scan);
            }
        }
        addSlopes();
        return places.stream()
                .map(place -> new int[] {2 * (x0 + place[0]), 2 * (y0 + place[1])})
                .toList();
    }

    private void scan(int y) {
        for (int from = 0, to; from < width; from = to) {
            to = Math.min(width, thresholds.end(x0 + from) - x0);
            float threshold = thresholds.at(x0 + from, y0 + y);
            int count = rings.above(FIRST_LOOK * threshold, from, to, y, high);
            for (int i = 0; i < count; i++) {
                note(high[i], y, threshold);
            }
        }
    }

    private void note(int x, int y, float threshold) {
        if (rings.isPeak(x, y)) {
            if (rings.vertex(x, y) > threshold) {
                places.add(new int[] {x, y});
            }
        } else if (rings.responseAt(x, y) > threshold && rings.bulges(x, y)) {
            slopes.add(new int[] {x, y});
        }
    }

    private void addSlopes() {
        BitSet near = new BitSet((width + 2) * (height + 2));
        places.forEach(place -> markAround(place, near));
        for (int[] slope : slopes) {
            if (!near.get(index(slope[0], slope[1]))) {
                places.add(slope);
                markAround(slope, near);
            }
        }
    }

    private void markAround(int[] place, BitSet near) {
        for (int y = place[1] - 1; y <= place[1] + 1; y++) {
            near.set(index(place[0] - 1, y), index(place[0] + 1, y) + 1);
        }
    }

    private int index(int x, int y) {
        return (y + 1) * (width + 2) + x + 1;
    }
}
