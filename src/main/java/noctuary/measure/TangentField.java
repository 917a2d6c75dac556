package noctuary.measure;

/** Field of view of a tangent projection. */
final class TangentField {
    private TangentField() {}

    /** Exact angle across {@code pixels}: 2 atan(N tan(s) / 2), degrees. */
    static double degrees(int pixels, double arcsecPerPx) {
        double pitch = Math.tan(Math.toRadians(arcsecPerPx / 3600));
        return Math.toDegrees(2 * Math.atan(pixels * pitch / 2));
    }
}
