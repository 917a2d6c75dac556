package noctuary.noise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import noctuary.image.Mosaic;
import noctuary.noise.NoiseReport.Gradient;
import noctuary.noise.NoiseReport.Scale;
import noctuary.noise.NoiseReport.Zone;
import noctuary.stats.Robust;

/** Gathers a {@link NoiseReport} from the grid and from strips of the frame. */
final class NoiseMeasure {
    private static final int LARGEST = 8;

    private final Grid grid;
    private final List<float[][]> tiles;
    private final BlockNoise blocks;

    NoiseMeasure(Grid grid, List<QuietTile> tiles, Optional<Mosaic> mosaic) {
        this.grid = grid;
        int stride = grid.lattice().stride();
        int phaseX = mosaic.isPresent() && stride == 2 && mosaic.get().filterAt(0, 0) != 'G' ? 1 : 0;
        this.tiles = tiles.stream().map(tile -> tile.rows(stride, phaseX)).toList();
        this.blocks = new BlockNoise(tiles, stride, phaseX, grid.phaseSigma()[phaseX]);
    }

    NoiseReport report() {
        List<Scale> scales = scales();
        return new NoiseReport(
                grid.wholeLevel(),
                Double.isFinite(blocks.sigma(1)) ? blocks.sigma(1) : grid.wholeSigma(),
                known(Differences.derSnr(rows())),
                known(Differences.immerkaerMedian(triples())),
                known(blocks.sigma(LARGEST) / blocks.sigma(1)),
                scales,
                zones(),
                gradient());
    }

    private static OptionalDouble known(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** Every third row of every tile. */
    private float[][] rows() {
        return tiles.stream()
                .flatMap(tile ->
                        IntStream.range(0, tile.length).filter(y -> y % 3 == 0).mapToObj(y -> tile[y]))
                .toArray(float[][]::new);
    }

    /** Three successive rows in every nine. */
    private float[][][] triples() {
        return tiles.stream()
                .flatMap(tile -> IntStream.range(0, tile.length - 2)
                        .filter(y -> y % 9 == 0)
                        .mapToObj(y -> new float[][] {tile[y], tile[y + 1], tile[y + 2]}))
                .toArray(float[][][]::new);
    }

    private List<Scale> scales() {
        List<Scale> scales = new ArrayList<>();
        for (int size = 1; size <= LARGEST; size *= 2) {
            double sigma = blocks.sigma(size);
            if (Double.isFinite(sigma)) {
                scales.add(new Scale(size, sigma));
            }
        }
        return scales;
    }

    private List<Zone> zones() {
        List<Zone> zones = new ArrayList<>();
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                int[] cells = cells(row, column);
                double level = Robust.median(
                        IntStream.of(cells).mapToDouble(grid::cellLevel).toArray());
                double noise = Robust.median(
                        IntStream.of(cells).mapToDouble(grid::cellSigma).toArray());
                zones.add(new Zone(row, column, level, noise));
            }
        }
        return zones;
    }

    /** Cells whose middle lies in the zone; the nearest when the frame is too small for one each. */
    private int[] cells(int zoneRow, int zoneColumn) {
        Lattice lattice = grid.lattice();
        int[] rows = span(zoneRow, lattice.rows());
        int[] columns = span(zoneColumn, lattice.columns());
        return IntStream.range(rows[0], rows[1])
                .flatMap(r -> IntStream.range(columns[0], columns[1]).map(c -> r * lattice.columns() + c))
                .toArray();
    }

    private static int[] span(int zone, int cells) {
        int from = Math.min(cells - 1, zone * cells / 3);
        return new int[] {from, Math.max(from + 1, (zone + 1) * cells / 3)};
    }

    private Gradient gradient() {
        Surface plane = Surface.fit(Patches.of(grid), Surface.PLANE);
        double range = Math.abs(plane.coefficient(1)) * 2 + Math.abs(plane.coefficient(2)) * 2;
        Lattice lattice = grid.lattice();
        double level = grid.wholeLevel();
        double direction = Math.toDegrees(
                Math.atan2(plane.coefficient(2) / lattice.height(), plane.coefficient(1) / lattice.width()));
        return new Gradient(range, level > 0 ? 100 * range / level : Double.NaN, direction);
    }
}
