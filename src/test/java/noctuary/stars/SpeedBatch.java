package noctuary.stars;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Measures one file many times by one call of the packed program with 1 GiB of heap; its first frames warm it up. */
final class SpeedBatch {
    private SpeedBatch() {}

    /** Wall milliseconds of the whole process for each frame. */
    static double perFrame(Path launcher, Path file, int frames) throws IOException, InterruptedException {
        List<String> call = new ArrayList<>(List.of(launcher.toString(), "measure", "--json"));
        call.addAll(Collections.nCopies(frames, file.toString()));
        ProcessBuilder batch = new ProcessBuilder(call);
        batch.environment().put("JDK_JAVA_OPTIONS", "-Xmx1g");
        batch.redirectError(ProcessBuilder.Redirect.DISCARD);
        long start = System.nanoTime();
        Process process = batch.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0 || said.lines().count() != frames) {
            throw new IOException(said);
        }
        return (System.nanoTime() - start) / 1e6 / frames;
    }
}
