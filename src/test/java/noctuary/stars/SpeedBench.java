package noctuary.stars;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import noctuary.fits.FitsFile;
import noctuary.fits.UnreadableException;
import noctuary.image.Plane;
import noctuary.measure.Meter;
import noctuary.noise.Defects;
import noctuary.stars.sim.FitsBytes;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import noctuary.stats.Robust;

/**
 * Times the whole measurement (reading, sky, detection, fits, zones, defects) of one 6248 x 4176 16-bit frame with 4000
 * stars against Source Extractor (whole process) and SEP on the same file, one after the other in every round, and
 * prints the medians of the rounds' ratios: warm, for a file of three planes of floats (reading and defects of all planes
 * included), and, when {@code target/noctuary.jar} is there, cold and over a batch in a process with 1 GiB of heap. Needs
 * source-extractor and python3-sep. The first argument is the number of frames of the batch, 100 unless given.
 */
public final class SpeedBench {
    private static final int ROUNDS = 7;
    private static final int WARMING = 30;
    /** Runs of the others before and after the batch. */
    private static final int BESIDE = 5;

    private SpeedBench() {}

    public static void main(String[] args) throws IOException, InterruptedException, UnreadableException {
        Path folder = Files.createTempDirectory("speed");
        Path file = folder.resolve("big.fits");
        Path stack = folder.resolve("stack.fits");
        FitsBytes.write(frame(42), file);
        SpeedStack.write(file, stack);
        Path target = Path.of("target").toAbsolutePath();
        Rounds rounds = new Rounds(file, stack, new SpeedRivals(folder, file), target);
        rounds.warmUp();
        for (int i = 0; i < ROUNDS; i++) {
            rounds.next(i);
        }
        rounds.print();
        int frames = args.length > 0 ? Integer.parseInt(args[0]) : 100;
        if (Files.exists(target.resolve("noctuary.jar"))) {
            rounds.batch(frames);
        }
        Files.delete(file);
        Files.delete(stack);
    }

    private static Plane frame(long seed) {
        return new SkySimulator(6248, 4176, seed)
                .shape(StarShape.constant(3, 0.1, 20, 3))
                .stars(4000, 8, 500, 15)
                .hotPixels(1000)
                .frame()
                .plane();
    }

    static void line(String what, double value) {
        System.out.printf(Locale.ROOT, "%-60s %8.2f%n", what, value);
    }

    /** The times of all rounds, milliseconds. */
    private record Rounds(Path file, Path stack, SpeedRivals rivals, Path target, double[][] times) {
        private static final int OURS = 0;
        private static final int STACK = 1;
        private static final int EXTRACTOR = 2;
        private static final int SEP = 3;
        private static final int LAUNCHER = 4;
        private static final int JAR = 5;

        Rounds(Path file, Path stack, SpeedRivals rivals, Path target) {
            this(file, stack, rivals, target, new double[6][ROUNDS]);
        }

        void warmUp() throws UnreadableException {
            line("first in this process, ms", single());
            for (int i = 1; i < WARMING; i++) {
                single();
            }
            threePlanes();
        }

        void next(int i) throws IOException, InterruptedException, UnreadableException {
            times[OURS][i] = single();
            times[EXTRACTOR][i] = rivals.sourceExtractor();
            times[SEP][i] = rivals.sep();
            times[STACK][i] = threePlanes();
            if (Files.exists(target.resolve("noctuary.jar"))) {
                times[LAUNCHER][i] = rivals.launcher(target.resolve("noctuary"));
                times[JAR][i] = rivals.jar(target.resolve("noctuary.jar"), "-Xmx400m");
            }
        }

        private double single() {
            long start = System.nanoTime();
            Meter.measure(file);
            return (System.nanoTime() - start) / 1e6;
        }

        /** As {@code measure} does, and the defects of the other two planes as well. */
        private double threePlanes() throws UnreadableException {
            long start = System.nanoTime();
            Meter.measure(stack);
            double measured = (System.nanoTime() - start) / 1e6;
            var planes = FitsFile.read(stack).planes();
            start = System.nanoTime();
            Defects.find(planes.get(0), Optional.empty(), OptionalDouble.empty());
            Defects.find(planes.get(2), Optional.empty(), OptionalDouble.empty());
            return measured + (System.nanoTime() - start) / 1e6;
        }

        /** Beside runs right before it and right after it: a machine is not equally quick all the time. */
        void batch(int frames) throws IOException, InterruptedException {
            double[] warm = new double[2 * BESIDE];
            double[] extractor = new double[2 * BESIDE];
            double each = 0;
            for (int i = 0; i < 2 * BESIDE; i++) {
                each = i == BESIDE ? SpeedBatch.perFrame(target.resolve("noctuary"), file, frames) : each;
                warm[i] = single();
                extractor[i] = rivals.sourceExtractor();
            }
            line("batch in 1 GiB, whole process, a frame, ms", each);
            line("batch, a frame / warm", each / Robust.median(warm));
            line("batch, a frame / source-extractor (at most 0.33)", each / Robust.median(extractor));
        }

        void print() {
            line("warm, ms", Robust.median(times[OURS]));
            line("source-extractor, whole process, ms", Robust.median(times[EXTRACTOR]));
            line("sep, background + extract + half-flux radius, ms", Robust.median(times[SEP]));
            line("warm / source-extractor (at most 0.33)", ratio(OURS, EXTRACTOR));
            line("warm / sep (at most 0.33)", ratio(OURS, SEP));
            line("cold by the launcher / source-extractor (at most 1.2)", ratio(LAUNCHER, EXTRACTOR));
            line("cold by java -Xmx400m -jar / source-extractor", ratio(JAR, EXTRACTOR));
            line("three planes of floats, all defects / warm (at most 4)", ratio(STACK, OURS));
        }

        private double ratio(int above, int below) {
            return Robust.median(IntStream.range(0, ROUNDS)
                    .mapToDouble(i -> times[above][i] / times[below][i])
                    .toArray());
        }
    }
}
