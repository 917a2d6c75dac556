package noctuary.noise;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Mosaic;
import noctuary.image.Plane;

/**
 * Noise and defects of one plane from one look at its background.
 *
 * @param noise absent when the plane has no pixels
 */
public record Survey(Optional<NoiseReport> noise, Defects defects) {
    public static Survey of(Plane plane, Optional<Mosaic> mosaic, OptionalDouble saturationAdu) {
        Grid grid = Grid.of(plane, Lattice.of(plane.width(), plane.height(), mosaic));
        List<QuietTile> tiles = TileChoice.tiles(grid);
        return new Survey(NoiseReport.of(grid, tiles, mosaic), Defects.of(grid, tiles, saturationAdu));
    }
}
