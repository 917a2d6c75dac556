package noctuary.stars;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Times other programs on a file, in milliseconds of wall time, each in a process of its own. */
final class SpeedRivals {
    private final Path folder;
    private final Path file;

    SpeedRivals(Path folder, Path file) {
        this.folder = folder;
        this.file = file;
    }

    /** Source Extractor, the whole process. */
    double sourceExtractor() throws IOException, InterruptedException {
        Path parameters = folder.resolve("p.param");
        Files.writeString(parameters, "X_IMAGE\nY_IMAGE\nFLUX_AUTO\nFWHM_IMAGE\nFLUX_RADIUS\nELLIPTICITY\nFLAGS\n");
        Path kernel = folder.resolve("k.conv");
        Files.writeString(kernel, "CONV NORM\n1 2 1\n2 4 2\n1 2 1\n");
        long start = System.nanoTime();
        run(
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
        return (System.nanoTime() - start) / 1e6;
    }

    /** SEP in float32 and one thread: background, extract, half-flux radius, without reading. */
    double sep() throws IOException, InterruptedException {
        String script = "import sys,time,numpy as np,sep\n"
                + "d=np.fromfile(sys.argv[1],dtype='>i2',offset=2880,count=6248*4176).astype(np.float32)"
                + ".reshape(4176,6248)+32768\n"
                + "t=time.time()\nb=sep.Background(d)\nd-=b.back()\n"
                + "o=sep.extract(d,3.0,err=b.globalrms)\n"
                + "sep.flux_radius(d,o['x'],o['y'],6.0*o['a'],0.5,subpix=5)\n"
                + "print((time.time()-t)*1e3)\n";
        return Double.parseDouble(run("/usr/bin/python3", "-c", script, file.toString()));
    }

    /** This project's own {@code measure} in a process just started, by the launcher that the build leaves. */
    double launcher(Path launcher) throws IOException, InterruptedException {
        long start = System.nanoTime();
        run(launcher.toString(), "measure", file.toString());
        return (System.nanoTime() - start) / 1e6;
    }

    /** The same by Java itself. */
    double jar(Path jar, String heap) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        long start = System.nanoTime();
        run(java, heap, "-jar", jar.toString(), "measure", file.toString());
        return (System.nanoTime() - start) / 1e6;
    }

    private String run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
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
