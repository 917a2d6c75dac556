package noctuary.fits;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Open data beside the project, and the tables of what it must answer. */
public final class RealFrames {
    private RealFrames() {}

    /** Their folder; without it the test is skipped. */
    public static Path folder() {
        Path folder = Path.of(System.getProperty("real.frames", "../shared/real-frames"));
        assumeTrue(Files.isDirectory(folder), "skipped: no real frames at " + folder + " (set real.frames)");
        return folder;
    }

    public static Path file(String name) {
        return folder().resolve(name);
    }

    static byte[] resource(String name) {
        try (InputStream in = RealFrames.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines of a resource without comments, split at tabs. */
    static List<String[]> table(String name) {
        return new String(resource(name), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(line -> line.split("\t"))
                .toList();
    }
}
