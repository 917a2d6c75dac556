package noctuary.noise;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Mosaic;
import noctuary.image.Plane;

/**
 * What is wrong with the pixels of one plane, each zero when looked for and not found, absent when it could not be
 * looked for.
 *
 * @param hotPixels number of single pixels more than nine sigmas above their neighbours
 * @param rowBanding excess standard deviation of the rows over white noise, ADU
 * @param columnBanding as rowBanding for columns
 * @param driftStreak strength of diagonal fixed-pattern streaks: their standard deviation over that of the rest of the
 *     noise
 * @param clippedBlackPercent share of pixels piled up at the lowest value
 * @param clippedWhitePercent share of pixels at or above saturation, or piled up at the highest value
 * @param coldPixels number of single pixels more than nine sigmas below their neighbours
 * @param driftStreakAngleDeg along the streaks, from +x towards +y, over -90 up to 90; absent without streaks
 * @param shading glow, dark corner and shadow; absent when the frame is too small to tell
 */
public record Defects(
        OptionalDouble hotPixels,
        OptionalDouble rowBanding,
        OptionalDouble columnBanding,
        OptionalDouble driftStreak,
        OptionalDouble clippedBlackPercent,
        OptionalDouble clippedWhitePercent,
        OptionalDouble coldPixels,
        OptionalDouble driftStreakAngleDeg,
        Optional<Shading> shading) {

    /** Looks for all of them. */
    public static Defects find(Plane plane, Optional<Mosaic> mosaic, OptionalDouble saturationAdu) {
        Grid grid = Grid.of(plane, Lattice.of(plane.width(), plane.height(), mosaic));
        return of(grid, TileChoice.tiles(grid), saturationAdu);
    }

    static Defects of(Grid grid, List<QuietTile> tiles, OptionalDouble saturationAdu) {
        Sweep sweep = Sweep.of(grid, (float) saturationAdu.orElse(Double.POSITIVE_INFINITY));
        if (!grid.hasNoise()) {
            return withoutNoise(sweep.ends());
        }
        Lattice lattice = grid.lattice();
        double sigma = grid.wholeSigma();
        Streak streak = StreakSearch.find(tiles);
        boolean enough = Math.min(lattice.width(), lattice.height()) >= Lattice.CELL;
        return new Defects(
                OptionalDouble.of(sweep.hot()),
                known(new Banding(sweep.rowMeans(), lattice.rows(), lattice::top).excess(sigma)),
                known(new Banding(sweep.columnMeans(), lattice.columns(), lattice::left).excess(sigma)),
                enough ? OptionalDouble.of(streak.strength()) : OptionalDouble.empty(),
                known(sweep.ends().blackPercent()),
                known(sweep.ends().whitePercent()),
                OptionalDouble.of(sweep.cold()),
                known(enough ? streak.angleDeg() : Double.NaN),
                Shading.of(grid));
    }

    private static Defects withoutNoise(Ends ends) {
        OptionalDouble none = OptionalDouble.empty();
        return new Defects(
                none,
                none,
                none,
                none,
                known(ends.blackPercent()),
                known(ends.whitePercent()),
                none,
                none,
                Optional.empty());
    }

    private static OptionalDouble known(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
