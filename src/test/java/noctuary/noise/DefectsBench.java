package noctuary.noise;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Mosaic;
import noctuary.image.Plane;

/**
 * Run by hand: what 200 clean frames report, what planted amounts come back as, and how long a whole frame takes.
 * Arguments: {@code clean}, {@code planted}, {@code time}; all without any.
 */
public final class DefectsBench {
    private static final int WIDTH = 1600;
    private static final int HEIGHT = 1100;

    private DefectsBench() {}

    public static void main(String[] args) {
        String which = args.length == 0 ? "clean planted time" : String.join(" ", args);
        if (which.contains("clean")) {
            clean();
        }
        if (which.contains("planted")) {
            planted();
        }
        if (which.contains("time")) {
            time();
        }
    }

    private static void clean() {
        int alarms = 0;
        for (int seed = 0; seed < 200; seed++) {
            Optional<Mosaic> mosaic = seed % 4 == 3 ? Optional.of(Mosaic.GRBG) : Optional.empty();
            Defects found = Defects.find(cleanFrame(seed), mosaic, OptionalDouble.empty());
            if (!isClean(found)) {
                alarms++;
                print("  seed %d: %s", seed, found);
            }
        }
        print("clean frames with anything reported: %d of 200", alarms);
    }

    /** Four kinds in turn: stars of 1.4 to 5 px, a nebula over the middle, a vignetted field, a colour mosaic. */
    static Plane cleanFrame(int seed) {
        SimulatedFrame frame = new SimulatedFrame(WIDTH, HEIGHT, seed);
        frame.sky(500 + 10 * seed, 0.4 * seed, 60 - 0.5 * seed).stars(200 + 12 * seed, 1.4 + seed % 10 * 0.4, 20);
        switch (seed % 4) {
            case 1 -> frame.nebula(100 + 5 * seed);
            case 2 -> frame.vignette(0.25);
            case 3 -> frame.vignette(0.15).grbg(0.6, 1, 0.75);
            default -> frame.sky(0, 0, 0);
        }
        return frame.photons(1 + seed % 3, 3).clip(0, 60000).toSixteenBit();
    }

    static boolean isClean(Defects found) {
        return found.hotPixels().orElseThrow() == 0
                && found.coldPixels().orElseThrow() == 0
                && found.rowBanding().orElseThrow() == 0
                && found.columnBanding().orElseThrow() == 0
                && found.driftStreak().orElseThrow() == 0
                && found.clippedBlackPercent().orElseThrow() == 0
                && found.shading().orElseThrow().equals(Shading.NONE);
    }

    private static SimulatedFrame field(int seed) {
        return new SimulatedFrame(WIDTH, HEIGHT, seed).sky(900, 60, 30).stars(700, 3, 30);
    }

    private static void planted() {
        print("noise 10 ADU, %d x %d px, 700 stars; planted -> found over planted for four seeds", WIDTH, HEIGHT);
        for (double above : new double[] {100, 120, 150, 500}) {
            for (double count : new double[] {20, 100, 1000}) {
                row(
                        String.format(Locale.ROOT, "hot pixels of %.0f ADU: %.0f", above, count),
                        count,
                        seed -> find(field(seed).whiteNoise(10).singles((int) count, above))
                                .hotPixels());
            }
        }
        for (double sigma : new double[] {0.1, 0.2, 0.3, 0.5, 1, 3}) {
            row(
                    "row offsets " + sigma,
                    sigma,
                    seed -> find(field(seed).whiteNoise(10).rowOffsets(sigma)).rowBanding());
            row(
                    "column offsets " + sigma,
                    sigma,
                    seed -> find(field(seed).whiteNoise(10).columnOffsets(sigma))
                            .columnBanding());
        }
        for (double share : new double[] {0.08, 0.1, 0.15, 0.2, 0.3, 0.5}) {
            row(
                    "streaks 33 deg 20 px " + share,
                    share,
                    seed -> find(field(seed).whiteNoise(10).streaks(10 * share, 33, 20))
                            .driftStreak());
            row(
                    "streaks -45 deg 12 px " + share,
                    share,
                    seed -> find(field(seed).whiteNoise(10).streaks(10 * share, -45, 12))
                            .driftStreak());
        }
        for (double share : new double[] {0.1, 0.15, 0.2, 0.3, 0.5}) {
            row(
                    "streaks under a nebula " + share,
                    share,
                    seed -> find(field(seed).nebula(150).whiteNoise(10).streaks(10 * share, 27, 24))
                            .driftStreak());
        }
        for (double depth : new double[] {3, 5, 10, 20}) {
            row(
                    "shadow depth % " + depth,
                    depth,
                    seed -> OptionalDouble.of(
                            find(field(seed).shadow(depth / 100, 0.3).whiteNoise(10))
                                    .shading()
                                    .orElseThrow()
                                    .shadow()
                                    .map(Shading.Shadow::depthPercent)
                                    .orElse(0.0)));
        }
        for (double peak : new double[] {10, 20, 50, 200}) {
            double inCorner = peak * cornerMean(150);
            row(
                    "glow in the corner cell " + Math.round(inCorner),
                    inCorner,
                    seed -> OptionalDouble.of(find(field(seed).glow(peak, 150).whiteNoise(10))
                            .shading()
                            .orElseThrow()
                            .glow()
                            .map(Shading.Corner::amount)
                            .orElse(0.0)));
        }
    }

    /** Mean of exp(-distance / reach) over the corner cell. */
    static double cornerMean(double reach) {
        double sum = 0;
        for (int y = 0; y < 64; y++) {
            for (int x = 0; x < 64; x++) {
                sum += Math.exp(-Math.hypot(x, y) / reach);
            }
        }
        return sum / 4096;
    }

    private static Defects find(SimulatedFrame frame) {
        return Defects.find(frame.toSixteenBit(), Optional.empty(), OptionalDouble.empty());
    }

    private interface Found {
        OptionalDouble of(int seed);
    }

    private static void row(String name, double planted, Found found) {
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "  %-32s", name));
        for (int seed = 1; seed <= 4; seed++) {
            line.append(String.format(Locale.ROOT, " %6.3f", found.of(seed).orElseThrow() / planted));
        }
        print("%s", line);
    }

    private static void time() {
        Plane frame = new SimulatedFrame(6248, 4176, 5)
                .sky(900, 60, 30)
                .stars(4000, 3, 30)
                .whiteNoise(10)
                .toSixteenBit();
        for (int run = 0; run < 12; run++) {
            long start = System.nanoTime();
            Survey.of(frame, run % 2 == 0 ? Optional.empty() : Optional.of(Mosaic.GRBG), OptionalDouble.of(65535));
            print("6248 x 4176, %s: %.0f ms", run % 2 == 0 ? "mono" : "mosaic", (System.nanoTime() - start) / 1e6);
        }
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
