package noctuary.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * The sky around one target: its place, its stars and its light. Positions are those of the real objects (J2000, from
 * memory of the common catalogues, good to a few arcseconds); what they look like is invented.
 *
 * @param object as a frame's header names it
 */
record DemoSky(String object, double raDeg, double decDeg, List<CatalogueStar> stars, Glow glow) {
    private static final double FIELD_RADIUS = 1560;
    private static final Map<String, DemoSky> KNOWN = new ConcurrentHashMap<>();
    private static final CatalogueStar[] ORION = {
        at(-13, 5, 5.2, -0.1),
        at(-22, 14, 6.7, 0.0),
        at(-9, 19, 7.9, 0.1),
        at(-25, -2, 7.0, 0.0),
        at(82, -89, 5.1, -0.1),
        at(134, -101, 6.4, -0.1),
        at(60, 472, 6.9, 0.0),
        at(-180, -260, 8.9, 0.3),
        at(300, 120, 9.2, 0.9)
    };

    private static final Map<String, Function<Integer, DemoSky>> TARGETS = Map.ofEntries(
            Map.entry(
                    "M27",
                    seed -> of(
                            "M27",
                            "19:59:36.4 +22:43:16",
                            -3.7,
                            seed,
                            1,
                            new Dumbbell(stir(seed)),
                            at(0, 0, 13.7, -0.2))),
            Map.entry(
                    "M57",
                    seed -> of(
                            "M57",
                            "18:53:35.1 +33:01:45",
                            14,
                            seed,
                            1,
                            new RingNebula(stir(seed)),
                            at(0, 0, 15.4, -0.2),
                            at(-2, 66, 13.0, 0.7))),
            Map.entry(
                    "NGC 6888",
                    seed -> of(
                            "NGC 6888",
                            "20:12:06.5 +38:21:18",
                            2.4,
                            seed,
                            0.8,
                            new Crescent(stir(seed)),
                            at(0, 0, 8.4, 0.2),
                            at(-188, 236, 8.6, 0.9),
                            at(330, -96, 8.0, 1.2))),
            Map.entry(
                    "NGC 7000",
                    seed -> of(
                            "NGC 7000",
                            "20:58:50.0 +43:50:00",
                            -1.2,
                            seed,
                            0.38,
                            new IonisedWall(stir(seed)),
                            at(-420, 310, 8.3, 1.3))),
            Map.entry("M31", seed -> of("M31", "00:42:44.3 +41:16:09", -21.6, seed, 1.5, andromeda(seed))),
            Map.entry("M33", seed -> of("M33", "01:33:50.9 +30:39:36", -31.3, seed, 1.6, triangulum(seed))),
            Map.entry("M51", seed -> of("M51", "13:29:52.7 +47:11:43", 68.6, seed, 1.3, whirlpool(seed))),
            Map.entry("M81", seed -> of("M81", "09:55:33.2 +69:03:55", 40.9, seed, 1.2, bode(seed))),
            Map.entry(
                    "M82",
                    seed -> of(
                            "M82",
                            "09:55:52.2 +69:40:47",
                            40.6,
                            seed,
                            1.2,
                            new EdgeOnGalaxy(65, 72, 21, 17.7, 3.4, 13, 1.5, 0.035, stir(seed)),
                            at(-190, -70, 9.9, 0.8))),
            Map.entry(
                    "NGC 891",
                    seed -> of(
                            "NGC 891",
                            "02:22:33.4 +42:20:57",
                            -17.4,
                            seed,
                            1.2,
                            new EdgeOnGalaxy(22, 118, 15, 19.7, 2.6, 5.5, 0.3, 0, stir(seed)))),
            Map.entry(
                    "M42",
                    seed -> of("M42", "05:35:17.3 -05:23:28", -19.4, seed, 0.5, new OrionCore(stir(seed)), ORION)),
            Map.entry("M45", DemoSky::sisters),
            Map.entry("M13", DemoSky::hercules));

    /** The target of that name, always the same. */
    static DemoSky towards(String name) {
        return KNOWN.computeIfAbsent(name, key -> TARGETS.get(key).apply(key.hashCode()));
    }

    private static DemoSky of(
            String name, String place, double latitude, int seed, double thinning, Glow glow, CatalogueStar... more) {
        String[] parts = place.split(" ");
        List<CatalogueStar> stars = new ArrayList<>(List.of(more));
        stars.addAll(StarCatalogue.field(seed, latitude, FIELD_RADIUS, thinning));
        return new DemoSky(name, 15 * sexagesimal(parts[0]), sexagesimal(parts[1]), List.copyOf(stars), glow);
    }

    /** Three of the Pleiades at their real distances (03:46:40 +24:10 is the middle of the frame) and fainter members. */
    private static DemoSky sisters(int seed) {
        CatalogueStar[] lamps = {
            at(672, -222, 3.4, -0.05),
            at(-278, -786, 4.6, 0.0),
            at(-690, 724, 4.3, -0.05),
            at(-628, 1396, 6.3, 0.0),
            at(610, 120, 7.2, 0.1),
            at(90, 330, 7.6, 0.2),
            at(-60, -330, 8.2, 0.25),
            at(-500, -180, 8.6, 0.3)
        };
        return of(
                "M45",
                "03:46:40.0 +24:10:00",
                -23.5,
                seed,
                0.7,
                new ReflectionVeil(List.of(lamps).subList(0, 5), stir(seed)),
                lamps);
    }

    private static DemoSky hercules(int seed) {
        List<CatalogueStar> stars = new ArrayList<>(StarCatalogue.globular(seed, 15000, 38, 1250));
        DemoSky field = of("M13", "16:41:41.2 +36:27:36", 40.9, seed, 1, new ClusterHaze(40, 1250, 18.4));
        stars.addAll(field.stars);
        return new DemoSky(field.object, field.raDeg, field.decDeg, List.copyOf(stars), field.glow);
    }

    private static Glow andromeda(int seed) {
        return new SpiralGalaxy(0, 0, 37, 74, 1050, 19.9, 150, 18.9, 2, 7.5, 0.9, 0.6, 3.6, 0.12, stir(seed));
    }

    private static Glow triangulum(int seed) {
        return new SpiralGalaxy(0, 0, 23, 54, 520, 20.6, 40, 20.7, 2, 27, 1.6, 0.8, 0.6, 0.9, stir(seed));
    }

    private static Glow bode(int seed) {
        return new SpiralGalaxy(0, 0, 157, 57, 185, 20.1, 42, 18.4, 2, 13, 1.15, 0.5, 0.9, 0.5, stir(seed));
    }

    private static Glow whirlpool(int seed) {
        Glow main = new SpiralGalaxy(0, 0, 170, 24, 95, 19.7, 17, 18.3, 2, -19, 1.7, 0.5, 1.3, 0.9, stir(seed));
        Glow companion =
                new SpiralGalaxy(70, 255, 80, 35, 36, 20.3, 17, 18.5, 2, 40, 0.15, 0.4, 1.6, 0, stir(seed + 1));
        Turbulence noise = stir(seed + 2);
        Glow bridge = (x, y, bands) -> {
            double curve = 62 + 40 * StrictMath.sin((y - 80) / 120);
            double along = StrictMath.exp(-StrictMath.pow((y - 190) / 90, 2));
            double across = StrictMath.exp(-StrictMath.pow((x - curve) / 20, 2));
            Glow.add(
                    bands,
                    Glow.brightness(21.9) * along * across * (0.8 + 0.6 * noise.fractal(x / 25, y / 25, 4)),
                    0.85,
                    1,
                    1.1);
            double shell = Math.sqrt(StrictMath.pow((x - 90) / 1.2, 2) + StrictMath.pow(y - 255, 2));
            double plume = StrictMath.exp(-shell / 95) * (0.7 + 0.6 * noise.fractal(x / 90, y / 90, 4));
            Glow.add(bands, Glow.brightness(23.0) * plume, 1.0, 1, 0.9);
        };
        return (x, y, bands) -> {
            main.addTo(x, y, bands);
            companion.addTo(x, y, bands);
            bridge.addTo(x, y, bands);
        };
    }

    private static CatalogueStar at(double east, double north, double mag, double colour) {
        return CatalogueStar.of(east, north, mag, colour);
    }

    private static Turbulence stir(int seed) {
        return new Turbulence(seed);
    }

    private static double sexagesimal(String text) {
        String[] parts = text.split(":");
        double size = Math.abs(Double.parseDouble(parts[0]))
                + Double.parseDouble(parts[1]) / 60
                + Double.parseDouble(parts[2]) / 3600;
        return text.startsWith("-") ? -size : size;
    }
}
