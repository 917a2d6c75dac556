package noctuary.draw;

/**
 * One star to be drawn, in the pixel convention of {@code image}: 0-based pixel centres, y in file order.
 *
 * @param ellipticity 1 - b/a
 * @param angleDeg of the long axis from +x towards +y
 */
public record StarShape(double x, double y, double fwhmPx, double ellipticity, double angleDeg) {
    boolean drawable() {
        return Double.isFinite(x)
                && Double.isFinite(y)
                && Double.isFinite(fwhmPx)
                && Double.isFinite(ellipticity)
                && Double.isFinite(angleDeg);
    }

    String words() {
        return "x " + Digits.fixed(x, 0) + ", y " + Digits.fixed(y, 0) + ": FWHM " + Digits.fixed(fwhmPx, 2)
                + " px, ellipticity " + Digits.fixed(ellipticity, 2) + " at " + Digits.fixed(angleDeg, 0) + "°";
    }
}
