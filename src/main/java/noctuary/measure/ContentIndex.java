package noctuary.measure;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import noctuary.keep.KeptFile;

/** Remembers each file's digest by its stamp, so that unchanged files are not read again. Damage costs time only. */
final class ContentIndex {
    private record Known(String stamp, String digest) {}

    private final Path store;
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    ContentIndex(Path store) {
        this.store = store;
        try {
            new String(KeptFile.readSummed(store), StandardCharsets.UTF_8)
                    .lines()
                    .forEach(this::recall);
        } catch (IOException | RuntimeException e) {
            known.clear();
        }
    }

    String digest(Path file) throws IOException {
        String path = file.toAbsolutePath().normalize().toString();
        String stamp = ContentIdentity.stamp(file);
        Known before = known.get(path);
        if (before != null && before.stamp().equals(stamp)) {
            return before.digest();
        }
        String digest = ContentIdentity.digest(file);
        known.put(path, new Known(stamp, digest));
        return digest;
    }

    void save() {
        StringBuilder lines = new StringBuilder();
        new TreeMap<>(known).forEach((path, k) -> {
            if (path.indexOf('\n') < 0) {
                lines.append(k.digest())
                        .append('\t')
                        .append(k.stamp())
                        .append('\t')
                        .append(path)
                        .append('\n');
            }
        });
        KeptFile.writeSummed(store, lines.toString().getBytes(StandardCharsets.UTF_8));
    }

    private void recall(String line) {
        String[] parts = line.split("\t", 3);
        if (parts.length == 3 && parts[0].matches("[0-9a-f]{64}")) {
            known.put(parts[2], new Known(parts[1], parts[0]));
        }
    }
}
