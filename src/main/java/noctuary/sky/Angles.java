package noctuary.sky;

/** Trigonometry in degrees. */
final class Angles {
    private Angles() {}

    static double sin(double deg) {
        return Math.sin(Math.toRadians(deg));
    }

    static double cos(double deg) {
        return Math.cos(Math.toRadians(deg));
    }

    static double atan2(double y, double x) {
        return Math.toDegrees(Math.atan2(y, x));
    }

    static double asin(double sine) {
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sine))));
    }

    /** The same direction between 0 and 360. */
    static double turn(double deg) {
        double turned = deg % 360;
        return turned < 0 ? turned + 360 : turned;
    }

    /** Angle between two directions, exact for small angles too. */
    static double separation(double longitude1, double latitude1, double longitude2, double latitude2) {
        double dLongitude = longitude2 - longitude1;
        double x = cos(latitude2) * sin(dLongitude);
        double y = cos(latitude1) * sin(latitude2) - sin(latitude1) * cos(latitude2) * cos(dLongitude);
        double z = sin(latitude1) * sin(latitude2) + cos(latitude1) * cos(latitude2) * cos(dLongitude);
        return atan2(Math.hypot(x, y), z);
    }
}
