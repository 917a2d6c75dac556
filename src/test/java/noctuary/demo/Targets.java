package noctuary.demo;

import java.util.List;

/**
 * The targets of the demo journal. Positions are those of the real objects (J2000, from memory of the common
 * catalogues, good to a few arcseconds); what they look like is invented.
 */
final class Targets {
    private static final List<CatalogueStar> ORION = List.of(
            at(-13, 5, 5.2, -0.1),
            at(-22, 14, 6.7, 0.0),
            at(-9, 19, 7.9, 0.1),
            at(-25, -2, 7.0, 0.0),
            at(82, -89, 5.1, -0.1),
            at(134, -101, 6.4, -0.1),
            at(60, 472, 6.9, 0.0),
            at(-180, -260, 8.9, 0.3),
            at(300, 120, 9.2, 0.9));

    /** Alcyone, Merope, Maia, Taygeta at their real distances from the field's middle, and fainter members. */
    private static final List<CatalogueStar> SISTERS = List.of(
            at(672, -222, 3.4, -0.05),
            at(-278, -786, 4.6, 0.0),
            at(-690, 724, 4.3, -0.05),
            at(-628, 1396, 6.3, 0.0),
            at(610, 120, 7.2, 0.1),
            at(90, 330, 7.6, 0.2),
            at(-60, -330, 8.2, 0.25),
            at(-500, -180, 8.6, 0.3));

    private static final List<CatalogueStar> WIND =
            List.of(at(0, 0, 8.4, 0.2), at(-188, 236, 8.6, 0.9), at(330, -96, 8.0, 1.2));

    private Targets() {}

    static DemoSky make(String name) {
        int seed = name.hashCode();
        Turbulence noise = new Turbulence(seed);
        return switch (name) {
            case "M13" -> hercules(name, seed);
            case "M27" -> field(name, "19:59:36.4 +22:43:16", -3.7, 1, new Dumbbell(noise), at(0, 0, 13.7, -0.2));
            case "M31" -> field(name, "00:42:44.3 +41:16:09", -21.6, 1.5, andromeda(noise));
            case "M33" -> field(name, "01:33:50.9 +30:39:36", -31.3, 1.6, triangulum(noise));
            case "M42" -> DemoSky.of(name, "05:35:17.3 -05:23:28", -19.4, 0.5, new OrionCore(noise), ORION);
            case "M45" ->
                DemoSky.of(
                        name,
                        "03:46:40.0 +24:10:00",
                        -23.5,
                        0.7,
                        new ReflectionVeil(SISTERS.subList(0, 5), noise),
                        SISTERS);
            case "M51" -> field(name, "13:29:52.7 +47:11:43", 68.6, 1.3, Whirlpool.of(seed));
            case "M57" ->
                field(
                        name,
                        "18:53:35.1 +33:01:45",
                        14,
                        1,
                        new RingNebula(noise),
                        at(0, 0, 15.4, -0.2),
                        at(-2, 66, 13.0, 0.7));
            case "M81" -> field(name, "09:55:33.2 +69:03:55", 40.9, 1.2, bode(noise));
            case "M82" -> field(name, "09:55:52.2 +69:40:47", 40.6, 1.2, cigar(noise), at(-190, -70, 9.9, 0.8));
            case "NGC 891" -> field(name, "02:22:33.4 +42:20:57", -17.4, 1.2, needle(noise));
            case "NGC 6888" -> DemoSky.of(name, "20:12:06.5 +38:21:18", 2.4, 0.8, new Crescent(noise), WIND);
            case "NGC 7000" ->
                field(name, "20:58:50.0 +43:50:00", -1.2, 0.38, new IonisedWall(noise), at(-420, 310, 8.3, 1.3));
            default -> throw new IllegalArgumentException("no such target: " + name);
        };
    }

    private static DemoSky field(
            String name, String place, double latitude, double crowding, Glow glow, CatalogueStar... more) {
        return DemoSky.of(name, place, latitude, crowding, glow, List.of(more));
    }

    private static DemoSky hercules(String name, int seed) {
        return DemoSky.of(
                name,
                "16:41:41.2 +36:27:36",
                40.9,
                1,
                new ClusterHaze(40, 1250, 18.4),
                StarCatalogue.globular(seed, 15000, 38, 1250));
    }

    private static Glow andromeda(Turbulence noise) {
        return new SpiralGalaxy(0, 0, 37, 74, 1050, 19.9, 150, 18.9, 2, 7.5, 0.9, 0.6, 3.6, 1, 0.12, noise);
    }

    private static Glow triangulum(Turbulence noise) {
        return new SpiralGalaxy(0, 0, 23, 54, 520, 20.6, 40, 20.7, 2, 27, 1.6, 0.8, 0.6, 0, 0.9, noise);
    }

    private static Glow bode(Turbulence noise) {
        return new SpiralGalaxy(0, 0, 157, 57, 185, 20.1, 42, 18.4, 2, 13, 1.15, 0.5, 0.9, 0, 0.5, noise);
    }

    private static Glow cigar(Turbulence noise) {
        return new EdgeOnGalaxy(65, 72, 21, 17.7, 3.4, 13, 1.5, 0.035, noise);
    }

    private static Glow needle(Turbulence noise) {
        return new EdgeOnGalaxy(22, 118, 15, 19.7, 2.6, 5.5, 0.3, 0, noise);
    }

    private static CatalogueStar at(double east, double north, double mag, double colourIndex) {
        return CatalogueStar.of(east, north, mag, colourIndex);
    }
}
