package noctuary.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import noctuary.stars.Star;
import noctuary.stats.Robust;

/**
 * What the ellipticities of a frame's stars have in common: the medians of e cos 2θ and e sin 2θ, taken back to an
 * ellipticity and an angle. Noise, and aberrations that point to the centre or around it, cancel.
 *
 * @param angleDeg of the common long axis, from +x towards +y, -90 to 90
 * @param standardError of the ellipticity
 */
public record Elongation(double ellipticity, double angleDeg, double standardError) {
    private static final int FEWEST = 5;

    /** Absent with fewer than five measured stars. */
    public static Optional<Elongation> of(List<Star> stars) {
        double[] along = component(stars, s -> s.ellipticity() * Math.cos(2 * Math.toRadians(s.angleDeg())));
        double[] across = component(stars, s -> s.ellipticity() * Math.sin(2 * Math.toRadians(s.angleDeg())));
        if (along.length < FEWEST) {
            return Optional.empty();
        }
        double e1 = Robust.median(along);
        double e2 = Robust.median(across);
        double error = Math.max(Robust.medianError(along), Robust.medianError(across));
        return Optional.of(new Elongation(Math.hypot(e1, e2), Math.toDegrees(Math.atan2(e2, e1)) / 2, error));
    }

    private static double[] component(List<Star> stars, ToDoubleFunction<Star> part) {
        return stars.stream().filter(Star::measured).mapToDouble(part).toArray();
    }
}
