package noctuary.stars;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Locale;
import noctuary.journal.Measuring;

/** Measures one file many times, as the command {@code measure} does, in a process of its own with 1 GiB of heap; its first frames warm it up. */
public final class SpeedBatch {
    private SpeedBatch() {}

    /** Mean milliseconds a frame, the first ones included. */
    static double perFrame(Path file, int frames) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx1g",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SpeedBatch.class.getName(),
                        file.toString(),
                        Integer.toString(frames))
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        if (process.waitFor() != 0) {
            throw new IOException(said);
        }
        return Double.parseDouble(said);
    }

    public static void main(String[] args) {
        int frames = Integer.parseInt(args[1]);
        long start = System.nanoTime();
        Measuring.measure(Collections.nCopies(frames, Path.of(args[0])), measured -> {
            if (measured.troubled()) {
                throw new IllegalStateException(measured.table());
            }
        });
        System.out.println(String.format(Locale.ROOT, "%.3f", (System.nanoTime() - start) / 1e6 / frames));
    }
}
