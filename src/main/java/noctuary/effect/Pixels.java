package noctuary.effect;

import java.util.List;
import noctuary.image.Plane;

/**
 * The pixels of one picture.
 *
 * @param white the value of full white; infinite for linear data, which has none
 * @param lossy whether its file format itself changes pixels, as JPEG does
 */
public record Pixels(List<Plane> planes, double white, boolean lossy) {
    public Pixels {
        planes = List.copyOf(planes);
    }
}
