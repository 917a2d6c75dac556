package noctuary.stars;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import noctuary.image.Plane;
import noctuary.stars.sim.FitsBytes;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import noctuary.stats.Robust;

/**
 * Times the measurement of one 6248 x 4176 16-bit frame with 4000 stars against Source Extractor (whole process) and
 * SEP (background, extract, half-flux radius) on the same frame in the same run. Needs source-extractor and python3-sep
 * where they are to be compared.
 */
public final class SpeedBench {
    private static final int ROUNDS = 7;

    private SpeedBench() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("speed");
        Path file = folder.resolve("big.fits");
        Plane plane = new SkySimulator(6248, 4176, 42)
                .shape(StarShape.constant(3, 0.1, 20, 3))
                .stars(4000, 8, 500, 15)
                .hotPixels(1000)
                .frame()
                .plane();
        FitsBytes.write(plane, file);
        long start = System.nanoTime();
        StarField field = StarField.measure(plane, StarField.Conditions.PLAIN);
        print("ours, first in this process", milliseconds(start));
        System.out.printf(
                Locale.ROOT, "  %d found, %d measured, %s%n", field.stars().size(), field.measured(), field.fwhmPx());
        double[] ours = new double[ROUNDS];
        double[] extractor = new double[ROUNDS];
        double[] sep = new double[ROUNDS];
        for (int i = 0; i < 8; i++) {
            StarField.measure(plane, StarField.Conditions.PLAIN);
        }
        for (int i = 0; i < ROUNDS; i++) {
            start = System.nanoTime();
            StarField.measure(plane, StarField.Conditions.PLAIN);
            ours[i] = milliseconds(start);
            extractor[i] = sourceExtractor(folder, file);
            sep[i] = sep(file);
        }
        print("ours, warm", Robust.median(ours));
        print("source-extractor, whole process", Robust.median(extractor));
        print("sep, background + extract + half-flux radius", Robust.median(sep));
        System.out.printf(
                Locale.ROOT,
                "ratio to source-extractor %.2f, to sep %.2f%n",
                Robust.median(ours) / Robust.median(extractor),
                Robust.median(ours) / Robust.median(sep));
        System.out.println("file: " + file);
    }

    private static void print(String what, double milliseconds) {
        System.out.printf(Locale.ROOT, "%-46s %8.0f ms%n", what, milliseconds);
    }

    private static double milliseconds(long start) {
        return (System.nanoTime() - start) / 1e6;
    }

    private static double sourceExtractor(Path folder, Path file) throws IOException, InterruptedException {
        Path parameters = folder.resolve("p.param");
        Files.writeString(parameters, "X_IMAGE\nY_IMAGE\nFLUX_AUTO\nFWHM_IMAGE\nFLUX_RADIUS\nELLIPTICITY\nFLAGS\n");
        Path kernel = folder.resolve("k.conv");
        Files.writeString(kernel, "CONV NORM\n1 2 1\n2 4 2\n1 2 1\n");
        long start = System.nanoTime();
        run(
                folder,
                "source-extractor",
                file.toString(),
                "-PARAMETERS_NAME",
                parameters.toString(),
                "-FILTER_NAME",
                kernel.toString(),
                "-CATALOG_NAME",
                folder.resolve("out.cat").toString(),
                "-DETECT_THRESH",
                "3",
                "-VERBOSE_TYPE",
                "QUIET");
        return milliseconds(start);
    }

    private static double sep(Path file) throws IOException, InterruptedException {
        String script = "import sys,time,numpy as np,sep\n"
                + "d=np.fromfile(sys.argv[1],dtype='>i2',offset=2880,count=6248*4176).astype(np.float32)"
                + ".reshape(4176,6248)+32768\n"
                + "t=time.time()\nb=sep.Background(d)\nd-=b.back()\n"
                + "o=sep.extract(d,3.0,err=b.globalrms)\n"
                + "sep.flux_radius(d,o['x'],o['y'],6.0*o['a'],0.5,subpix=5)\n"
                + "print((time.time()-t)*1e3)\n";
        return Double.parseDouble(run(file.getParent(), "/usr/bin/python3", "-c", script, file.toString()));
    }

    private static String run(Path folder, String... command) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(command));
        Process process = new ProcessBuilder(words)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        try (InputStream in = process.getInputStream()) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8).trim();
            if (process.waitFor() != 0) {
                throw new IOException(text);
            }
            return text.lines().reduce((a, b) -> b).orElse("");
        }
    }
}
