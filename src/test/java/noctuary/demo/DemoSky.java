package noctuary.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The sky around one target: its place, its stars and its light.
 *
 * @param object as a frame's header names it
 */
record DemoSky(String object, double raDeg, double decDeg, List<CatalogueStar> stars, Glow glow) {
    private static final double FIELD_RADIUS = 1560;
    private static final Map<String, DemoSky> KNOWN = new ConcurrentHashMap<>();

    DemoSky {
        stars = List.copyOf(stars);
    }

    /** The target of that name, always the same. */
    static DemoSky towards(String name) {
        return KNOWN.computeIfAbsent(name, Targets::make);
    }

    /**
     * @param place J2000, as {@code h:m:s d:m:s}
     * @param crowding factor on the star counts of that galactic latitude
     */
    static DemoSky of(
            String name,
            String place,
            double galacticLatitudeDeg,
            double crowding,
            Glow glow,
            List<CatalogueStar> more) {
        String[] parts = place.split(" ");
        List<CatalogueStar> stars = new ArrayList<>(more);
        stars.addAll(StarCatalogue.field(name.hashCode(), galacticLatitudeDeg, FIELD_RADIUS, crowding));
        return new DemoSky(name, 15 * sexagesimal(parts[0]), sexagesimal(parts[1]), stars, glow);
    }

    private static double sexagesimal(String text) {
        String[] parts = text.split(":");
        double size = Math.abs(Double.parseDouble(parts[0]))
                + Double.parseDouble(parts[1]) / 60
                + Double.parseDouble(parts[2]) / 3600;
        return text.startsWith("-") ? -size : size;
    }
}
