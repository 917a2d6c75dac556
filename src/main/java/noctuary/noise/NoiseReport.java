package noctuary.noise;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Mosaic;
import noctuary.image.Plane;

/**
 * Background and noise of one plane, ADU. On a colour mosaic, the level is the mean over the four phases, and the noise
 * is that of the green pixels, with distances in steps of that colour.
 *
 * @param level of the background
 * @param sigma standard deviation of a pixel about the local background, on quiet parts of the field, stars masked
 * @param sigmaDerSnr from second differences at distance two along the rows (Stoehr et al. 2008)
 * @param sigmaImmerkaer from second differences of nearest neighbours (Immerkær 1996, median form)
 * @param correlation what noise of 8 x 8 px means is, over what the noise of a pixel would make it if neighbours were
 *     independent: 1 for white noise, more for interpolated, drizzled or smoothed noise
 * @param scales at 1, 2, 4 and 8 px
 * @param zones nine, row by row, row 0 at the first stored row
 */
public record NoiseReport(
        double level,
        double sigma,
        OptionalDouble sigmaDerSnr,
        OptionalDouble sigmaImmerkaer,
        OptionalDouble correlation,
        List<Scale> scales,
        List<Zone> zones,
        Gradient gradient) {
    public NoiseReport {
        scales = List.copyOf(scales);
        zones = List.copyOf(zones);
    }

    /**
     * @param sizePx side of the block
     * @param sigma standard deviation of block means away from stars, times the side: the same at all sizes for white
     *     noise
     */
    public record Scale(int sizePx, double sigma) {}

    /** Background of one cell of the 3 x 3 grid over the field. */
    public record Zone(int row, int column, double level, double sigma) {}

    /**
     * The plane through the background.
     *
     * @param range over the field, ADU
     * @param percent range as a share of the level; NaN when the level is not positive
     * @param directionDeg towards which it gets brighter, from +x towards +y, -180 to 180
     */
    public record Gradient(double range, double percent, double directionDeg) {}

    /** Absent when the plane has no pixels. */
    public static Optional<NoiseReport> measure(Plane plane, Optional<Mosaic> mosaic) {
        Grid grid = Grid.of(plane, Lattice.of(plane.width(), plane.height(), mosaic));
        return of(grid, TileChoice.tiles(grid), mosaic);
    }

    static Optional<NoiseReport> of(Grid grid, List<QuietTile> tiles, Optional<Mosaic> mosaic) {
        return Double.isNaN(grid.wholeLevel())
                ? Optional.empty()
                : Optional.of(new NoiseMeasure(grid, tiles, mosaic).report());
    }
}
