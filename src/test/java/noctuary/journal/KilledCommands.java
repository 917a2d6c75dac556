package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import noctuary.measure.FrameDraft;

/** {@code begin} and {@code note} killed at random moments: what they wrote is whole, and a second call does the rest. */
final class KilledCommands {
    private static final int TARGETS = 6;

    private final Path folder;
    private final Path jar;
    private final Random random = new Random(42);

    KilledCommands(Path folder, Path jar) {
        this.folder = folder;
        this.jar = jar;
    }

    static List<String> java(Path jar) {
        return List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", jar.toString());
    }

    /** Frames with digest and time, by path. */
    static Map<Path, String> sources(Path root) throws Exception {
        return files(root, ".fits");
    }

    /** How often a file was torn. */
    int begin(int kills) throws Exception {
        Path whole = folder.resolve("begun");
        long ms = timed("begin", whole.toString());
        Map<Path, String> sound = contents(whole);
        int torn = 0;
        for (int i = 0; i < kills; i++) {
            Path dir = folder.resolve("begun-" + i);
            kill(ms, "begin", dir.toString());
            torn += isPartOf(sound, dir) ? 0 : 1;
        }
        System.out.printf("begin killed %d times: torn %d%n", kills, torn);
        return torn;
    }

    int note(int kills) throws Exception {
        Path frames = folder.resolve("frames");
        for (int t = 0; t < TARGETS; t++) {
            FrameDraft.stars(3, t)
                    .card("OBJECT", "'M " + (10 + t) + "'")
                    .card("DATE-OBS", "'2025-06-14T22:30:00'")
                    .card("EXPTIME", "120.0")
                    .write(frames.resolve(t + ".fits"));
        }
        Map<Path, String> before = sources(frames);
        Path whole = folder.resolve("noted");
        timed("begin", whole.toString());
        long ms = timed("note", "--journal", whole.toString(), frames.toString());
        Map<Path, String> sound = contents(whole);
        int torn = 0;
        for (int i = 0; i < kills; i++) {
            Path dir = folder.resolve("noted-" + i);
            timed("begin", dir.toString());
            kill(ms, "note", "--journal", dir.toString(), frames.toString());
            boolean part = isPartOf(sound, dir);
            timed("note", "--journal", dir.toString(), frames.toString());
            torn += part && contents(dir).equals(sound) ? 0 : 1;
        }
        boolean untouched = before.equals(sources(frames));
        System.out.printf(
                "note killed %d times: torn %d, frames %s%n", kills, torn, untouched ? "untouched" : "CHANGED");
        return torn + (untouched ? 0 : 1);
    }

    private static boolean isPartOf(Map<Path, String> sound, Path dir) throws Exception {
        return !Files.exists(dir)
                || contents(dir).entrySet().stream().allMatch(e -> e.getValue().equals(sound.get(e.getKey())));
    }

    /** Digests of what is no draft, by path within. */
    private static Map<Path, String> contents(Path dir) throws Exception {
        Map<Path, String> contents = new TreeMap<>();
        files(dir, "").forEach((file, said) -> {
            if (!file.getFileName().toString().startsWith(".")) {
                contents.put(dir.relativize(file), said.substring(0, said.indexOf(' ')));
            }
        });
        return contents;
    }

    private static Map<Path, String> files(Path root, String ending) throws Exception {
        Map<Path, String> files = new TreeMap<>();
        MessageDigest sha = MessageDigest.getInstance("SHA-256");
        try (Stream<Path> all = Files.walk(root)) {
            for (Path file : all.filter(
                            f -> Files.isRegularFile(f) && f.toString().endsWith(ending))
                    .toList()) {
                String digest = HexFormat.of().formatHex(sha.digest(Files.readAllBytes(file)));
                files.put(file, digest + " " + Files.getLastModifiedTime(file));
            }
        }
        return files;
    }

    private long timed(String... command) throws Exception {
        long started = System.nanoTime();
        start(command).waitFor();
        return (System.nanoTime() - started) / 1_000_000;
    }

    private void kill(long wholeMs, String... command) throws Exception {
        Process process = start(command);
        process.waitFor(1 + (long) (random.nextDouble() * wholeMs * 1.2), TimeUnit.MILLISECONDS);
        process.destroyForcibly().waitFor();
    }

    private Process start(String... command) throws IOException {
        List<String> words = new ArrayList<>(java(jar));
        words.addAll(List.of(command));
        return new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
