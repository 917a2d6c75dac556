package noctuary.match;

import java.util.List;
import java.util.Optional;
import noctuary.stars.Star;

/**
 * A similarity that carries positions of one list onto another: first mirrored (x to -x) where {@code mirrored}, then
 * scaled, rotated counter-clockwise from +x towards +y, and shifted. Positions are in file order, y upwards.
 *
 * @param scale pixels of the other list per pixel of this one
 * @param rotationDeg -180 to 180
 * @param matched number of stars
 * @param rmsPx root mean square distance of the matched stars after the transform, pixels of the other list
 */
public record Alignment(
        double scale, double rotationDeg, boolean mirrored, double shiftX, double shiftY, int matched, double rmsPx) {

    /** Finds the transform from {@code from} to {@code to}, or nothing: never a guess. See {@link Match#find}. */
    public static Optional<Alignment> find(List<Star> from, List<Star> to) {
        return Match.find(from, to).map(Match::alignment);
    }

    /** Where (x, y) of the first list lies in the second: {x, y}. */
    public double[] apply(double x, double y) {
        double mx = mirrored ? -x : x;
        double cos = Math.cos(Math.toRadians(rotationDeg));
        double sin = Math.sin(Math.toRadians(rotationDeg));
        return new double[] {scale * (mx * cos - y * sin) + shiftX, scale * (mx * sin + y * cos) + shiftY};
    }

    /** The way back, from the second list to the first; the residual in pixels of the first. */
    public Alignment inverse() {
        return Similarity.of(this).inverse().alignment(matched, rmsPx / scale);
    }
}
