package noctuary.match;

import java.util.List;
import java.util.Optional;
import noctuary.stars.Star;

/**
 * A similarity that carries positions of one list onto another: first mirrored (x to -x) where {@code mirrored}, then
 * scaled, rotated counter-clockwise from +x towards +y, and shifted.
 *
 * @param scale pixels of the other list per pixel of this one
 * @param rmsPx residual, pixels of the other list
 * @param matched number of stars
 */
public record Alignment(
        double scale, double rotationDeg, boolean mirrored, double shiftX, double shiftY, int matched, double rmsPx) {

    /** Finds the transform from {@code from} to {@code to}, or nothing: never a guess. */
    public static Optional<Alignment> find(List<Star> from, List<Star> to) {
        throw new UnsupportedOperationException("not built yet: " + from.size() + to.size());
    }

    /** Where (x, y) of the first list lies in the second: {x, y}. */
    public double[] apply(double x, double y) {
        double mx = mirrored ? -x : x;
        double cos = Math.cos(Math.toRadians(rotationDeg));
        double sin = Math.sin(Math.toRadians(rotationDeg));
        return new double[] {scale * (mx * cos - y * sin) + shiftX, scale * (mx * sin + y * cos) + shiftY};
    }
}
