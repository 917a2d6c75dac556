package noctuary.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import noctuary.stars.sim.Dice;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/**
 * What noise against time costs beside measuring the same frames, as a ratio, both in one process one after the other.
 *
 * <p>Arguments: width (6248), height (4176), frames (8), rounds (4). The first round counts compiling too.
 */
final class NoiseCostBench {
    private static final int STARS_A_MEGAPIXEL = 150;

    private NoiseCostBench() {}

    public static void main(String[] args) throws IOException {
        int width = argument(args, 0, 6248);
        int height = argument(args, 1, 4176);
        int frames = argument(args, 2, 8);
        Path folder = Files.createTempDirectory("noise-cost");
        SmallJournal journal = new SmallJournal(folder);
        journal.entry("night", "rig: heron", "frames: [\"l*.fits\"]");
        for (int n = 0; n < frames; n++) {
            journal.frame("night", "l" + n + ".fits", draft(width, height, n));
        }
        for (int round = 0; round < argument(args, 3, 4); round++) {
            round(journal, folder.resolve("cache" + round));
        }
    }

    private static int argument(String[] args, int place, int usual) {
        return args.length > place ? Integer.parseInt(args[place]) : usual;
    }

    private static void round(SmallJournal journal, Path cache) {
        long start = System.nanoTime();
        EntrySheet sheet = journal.sheet("night");
        long measured = System.nanoTime();
        boolean found =
                new NoiseCourses(new MeasuredFiles(cache), cache).of(sheet).isPresent();
        double measuring = (measured - start) / 1e6;
        double combining = (System.nanoTime() - measured) / 1e6;
        System.out.println(String.format(
                Locale.ROOT,
                "measuring %.0f ms, noise against time %.0f ms (%s): ratio %.2f; heap %d MB",
                measuring,
                combining,
                found ? "found" : "not found",
                combining / measuring,
                Runtime.getRuntime().totalMemory() >> 20));
    }

    private static FrameDraft draft(int width, int height, int n) {
        SkySimulator sky = new SkySimulator(width, height, 100 + n)
                .sky(400)
                .camera(1.5, 6, 300, 60000)
                .shape((x, y) -> new StarShape.At(3, 0, 0, 3.5));
        Dice field = new Dice(9);
        for (long star = 0; star < (long) STARS_A_MEGAPIXEL * width * height / 1_000_000; star++) {
            double x = field.uniform(10, width - 150) + n * 7.3;
            double y = field.uniform(10, height - 10);
            sky.light(x, y, 6000 * Math.pow(10, field.uniform(0, 1)));
        }
        return FrameDraft.of(sky.frame().plane())
                .card("EXPTIME", "80.0")
                .card("IMAGETYP", "'LIGHT'")
                .card("DATE-OBS", String.format(Locale.ROOT, "'2025-05-02T22:%02d:00'", n));
    }
}
