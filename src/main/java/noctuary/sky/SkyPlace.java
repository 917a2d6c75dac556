package noctuary.sky;

/**
 * Where on Earth.
 *
 * @param latitudeDeg geodetic, north positive
 * @param longitudeDeg east positive
 */
public record SkyPlace(double latitudeDeg, double longitudeDeg) {
    public SkyPlace {
        if (!(Math.abs(latitudeDeg) <= 90) || !(Math.abs(longitudeDeg) <= 360)) {
            throw new IllegalArgumentException(
                    "no such place: latitude " + latitudeDeg + ", longitude " + longitudeDeg);
        }
    }
}
