package noctuary.stars;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.fits.FitsFile;
import noctuary.fits.UnreadableException;
import noctuary.image.Plane;
import noctuary.noise.Defects;
import noctuary.stars.sim.FitsBytes;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import noctuary.stats.Robust;

/**
 * Times the whole measurement (reading, sky, detection, fits, zones, defects) of one 6248 x 4176 16-bit frame with 4000
 * stars against Source Extractor (whole process) and SEP on the same file in the same run, and prints ratios: warm, cold
 * when {@code target/noctuary.jar} is there, over a batch, and for three planes of floats. Needs source-extractor and
 * python3-sep. The first argument is the number of frames of the batch, 100 unless given.
 */
public final class SpeedBench {
    private static final int ROUNDS = 7;
    private static final int WARMING = 8;

    private SpeedBench() {}

    public static void main(String[] args) throws IOException, InterruptedException, UnreadableException {
        Path folder = Files.createTempDirectory("speed");
        Path file = folder.resolve("big.fits");
        FitsBytes.write(frame(), file);
        SpeedRivals rivals = new SpeedRivals(folder, file);
        print("first in this process, ms", whole(file));
        for (int i = 0; i < WARMING; i++) {
            whole(file);
        }
        double[] ours = new double[ROUNDS];
        double[] processor = new double[ROUNDS];
        double[] extractor = new double[ROUNDS];
        double[] sep = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long before = processorTime();
            ours[i] = whole(file);
            processor[i] = (processorTime() - before) / 1e6;
            extractor[i] = rivals.sourceExtractor();
            sep[i] = rivals.sep();
        }
        double warm = Robust.median(ours);
        double process = Robust.median(extractor);
        print("warm, ms", warm);
        print("  its processor time, ms", Robust.median(processor));
        print("source-extractor, whole process, ms", process);
        print("sep, background + extract + half-flux radius, ms", Robust.median(sep));
        print("warm / source-extractor (at most 0.33)", warm / process);
        print("warm / sep (at most 0.33)", warm / Robust.median(sep));
        cold(rivals, process);
        print("three planes of floats / warm (at most 4)", threePlanes(file) / warm);
        batch(args.length > 0 ? Integer.parseInt(args[0]) : 100, file, warm);
        Files.walk(folder)
                .sorted((a, b) -> b.compareTo(a))
                .forEach(path -> path.toFile().delete());
    }

    private static Plane frame() {
        return new SkySimulator(6248, 4176, 42)
                .shape(StarShape.constant(3, 0.1, 20, 3))
                .stars(4000, 8, 500, 15)
                .hotPixels(1000)
                .frame()
                .plane();
    }

    private static double whole(Path file) throws UnreadableException {
        long start = System.nanoTime();
        measure(FitsFile.read(file).planes());
        return (System.nanoTime() - start) / 1e6;
    }

    /** As the measure command does: stars on every plane, defects on the middle one. */
    private static void measure(List<Plane> planes) {
        planes.forEach(plane -> StarField.measure(plane, StarField.Conditions.PLAIN));
        Defects.find(planes.get(planes.size() / 2), Optional.empty(), OptionalDouble.empty());
    }

    private static void cold(SpeedRivals rivals, double extractor) throws IOException, InterruptedException {
        Path jar = Path.of("target", "noctuary.jar");
        if (!Files.exists(jar)) {
            System.out.println("cold: no " + jar);
            return;
        }
        double[] cold = {rivals.cold(jar), rivals.cold(jar), rivals.cold(jar)};
        print("cold process / source-extractor (at most 1.2)", Robust.median(cold) / extractor);
    }

    private static double threePlanes(Path file) throws UnreadableException {
        Plane plane = FitsFile.read(file).planes().get(0);
        Plane floats = plane.cut(0, 0, plane.width(), plane.height());
        double[] times = new double[3];
        for (int i = 0; i < times.length; i++) {
            long start = System.nanoTime();
            measure(List.of(floats, floats, floats));
            times[i] = (System.nanoTime() - start) / 1e6;
        }
        return Robust.median(times);
    }

    private static void batch(int frames, Path file, double warm) throws UnreadableException {
        System.gc();
        pools().forEach(MemoryPoolMXBean::resetPeakUsage);
        double sum = 0;
        for (int i = 0; i < frames; i++) {
            sum += whole(file);
        }
        print("batch, a frame / warm (at most 1)", sum / frames / warm);
        long peak = pools().stream().mapToLong(p -> p.getPeakUsage().getUsed()).sum();
        print("peak heap of the batch, garbage included, MB", peak / 1e6);
    }

    private static List<MemoryPoolMXBean> pools() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(p -> p.getType() == MemoryType.HEAP)
                .toList();
    }

    private static long processorTime() {
        return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class)
                .getProcessCpuTime();
    }

    private static void print(String what, double value) {
        System.out.printf(Locale.ROOT, "%-52s %8.2f%n", what, value);
    }
}
