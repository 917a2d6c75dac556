package noctuary.stars.sim;

import java.util.List;
import noctuary.image.Plane;

/** A simulated frame and what was planted in it; positions are 0-based pixel centres, hot pixels as {x, y}. */
public record SimulatedFrame(Plane plane, List<PlantedStar> stars, List<int[]> hotPixels) {
    public SimulatedFrame {
        stars = List.copyOf(stars);
        hotPixels = List.copyOf(hotPixels);
    }
}
