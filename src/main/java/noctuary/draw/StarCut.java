package noctuary.draw;

import java.util.ArrayList;
import java.util.List;
import noctuary.image.Affine;
import noctuary.image.Asinh;
import noctuary.image.Plane;
import noctuary.image.Regrid;
import noctuary.stats.Robust;

/** One star in grey, from its own background to its own peak, so that only its shape tells it from another. */
public final class StarCut {
    /** Where the curve bends, as a share of the peak: outer parts are lifted, the core is not burnt out. */
    private static final double SOFTENING = 0.12;

    private StarCut() {}

    /**
     * @param planes whose mean is shown
     * @param toPlanes where a pixel of the cut-out lies in them; row 0 on top of the screen
     */
    public static byte[] jpeg(List<Plane> planes, Affine toPlanes, int side) {
        float[] mean = new float[side * side];
        for (Plane plane : planes) {
            Plane cut = Regrid.onto(plane, toPlanes, side, side);
            for (int i = 0; i < mean.length; i++) {
                mean[i] += cut.at(i % side, i / side) / planes.size();
            }
        }
        double sky = sky(mean, side);
        double peak = peak(mean, side) - sky;
        for (int i = 0; i < mean.length; i++) {
            double share = Float.isFinite(mean[i]) ? Math.min(1, Math.max(0, (mean[i] - sky) / peak)) : 0;
            mean[i] = (float) (0.05 + 0.95 * Asinh.normalised(share, SOFTENING));
        }
        return PreviewPixels.of(List.of(Plane.of(side, side, mean)), 1, false).tile();
    }

    /** Median along the four edges. */
    private static double sky(float[] pixels, int side) {
        List<Double> edge = new ArrayList<>();
        for (int i = 0; i < pixels.length; i++) {
            int x = i % side;
            int y = i / side;
            boolean outer = x < side / 12 || y < side / 12 || x >= side - side / 12 || y >= side - side / 12;
            if (outer && Float.isFinite(pixels[i])) {
                edge.add((double) pixels[i]);
            }
        }
        return edge.isEmpty()
                ? 0
                : Robust.median(edge.stream().mapToDouble(v -> v).toArray());
    }

    /** The brightest pixel near the middle. */
    private static double peak(float[] pixels, int side) {
        float peak = -Float.MAX_VALUE;
        for (int y = side / 3; y < side - side / 3; y++) {
            for (int x = side / 3; x < side - side / 3; x++) {
                peak = Math.max(peak, pixels[y * side + x]);
            }
        }
        return peak;
    }
}
