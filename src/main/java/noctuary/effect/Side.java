package noctuary.effect;

import java.util.List;
import noctuary.stars.Star;

/**
 * What is known of one of the two pictures before its pixels are looked at.
 *
 * @param stars found on it, with positions on its own grid
 * @param planes 1 or 3
 */
public record Side(int width, int height, int planes, List<Star> stars) {
    public Side {
        stars = List.copyOf(stars);
    }
}
