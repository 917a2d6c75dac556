package noctuary.noise;

import java.util.List;
import java.util.Optional;
import noctuary.noise.Surface.Patch;

/**
 * Light that the optics and the sky do not explain. Fields of light that darken towards all corners alike, or slope,
 * are no defect.
 *
 * @param glow light added in one corner, as by an amplifier; empty when there is none
 * @param darkCorner light missing in one corner; empty when there is none
 * @param shadow light missing over a part of the field that reaches its edge; empty when there is none
 */
public record Shading(Optional<Corner> glow, Optional<Corner> darkCorner, Optional<Shadow> shadow) {
    /**
     * @param row 0 for the first stored rows, 1 for the last
     * @param column 0 for the first columns, 1 for the last
     * @param amount mean over the outermost 64 px beyond the smooth field, ADU, positive
     */
    public record Corner(int row, int column, double amount) {}

    /**
     * @param fieldPercent share of the field
     * @param depthPercent light missing in it, share of the background level
     * @param x centre of the shaded part, share of the width from the first column
     * @param y centre, share of the height from the first row
     */
    public record Shadow(double fieldPercent, double depthPercent, double x, double y) {}

    static final Shading NONE = new Shading(Optional.empty(), Optional.empty(), Optional.empty());

    /** Absent when the frame has too few cells to tell. */
    static Optional<Shading> of(Grid grid) {
        Lattice lattice = grid.lattice();
        if (Math.min(lattice.columns(), lattice.rows()) < 6 || !grid.hasNoise()) {
            return Optional.empty();
        }
        List<Patch> patches = Patches.of(grid);
        Surface field = Surface.fit(patches, Surface.VIGNETTED);
        Corners corners = new Corners(grid, field);
        Optional<Shadow> shadow = new ShadowSearch(lattice, patches).find();
        return Optional.of(
                new Shading(corners.brightest(), shadow.isPresent() ? Optional.empty() : corners.darkest(), shadow));
    }
}
