package noctuary.stars;

import java.util.OptionalDouble;

/**
 * One cell of the 3 x 3 grid over the field, row 0 at the first stored row.
 *
 * @param stars measured stars in the cell; the rest is absent where they are too few
 */
public record Zone(
        int row, int column, int stars, OptionalDouble fwhmPx, OptionalDouble ellipticity, OptionalDouble angleDeg) {}
