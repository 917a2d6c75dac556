package noctuary.stars.sim;

/** The shape of stars over the field. */
@FunctionalInterface
public interface StarShape {
    At at(double x, double y);

    /** Shape at one place: geometric mean width, ellipticity 1 - b/a, angle from +x towards +y, Moffat beta. */
    record At(double fwhmPx, double ellipticity, double angleDeg, double beta) {}

    static StarShape constant(double fwhmPx, double ellipticity, double angleDeg, double beta) {
        At same = new At(fwhmPx, ellipticity, angleDeg, beta);
        return (x, y) -> same;
    }
}
