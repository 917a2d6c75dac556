package noctuary.measure;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import noctuary.keep.KeptFile;

/** Digests of the files of one folder, by name, with their stamps. Damage costs time only. */
final class ContentList {
    private record Known(String stamp, String digest) {}

    private final Path place;
    private final Map<String, Known> known = new ConcurrentHashMap<>();
    private volatile boolean changed;

    ContentList(Path place) {
        this.place = place;
        try {
            new String(KeptFile.readSummed(place), StandardCharsets.UTF_8)
                    .lines()
                    .forEach(this::recall);
        } catch (IOException | RuntimeException e) {
            known.clear();
        }
    }

    String digest(Path file) throws IOException {
        String name = file.getFileName().toString();
        String stamp = ContentIdentity.stamp(file);
        Known before = known.get(name);
        if (before != null && before.stamp().equals(stamp)) {
            return before.digest();
        }
        String digest = ContentIdentity.digest(file);
        known.put(name, new Known(stamp, digest));
        changed = true;
        return digest;
    }

    void save() {
        if (!changed) {
            return;
        }
        StringBuilder lines = new StringBuilder();
        new TreeMap<>(known).forEach((name, k) -> {
            if (name.indexOf('\n') < 0) {
                lines.append(k.digest())
                        .append('\t')
                        .append(k.stamp())
                        .append('\t')
                        .append(name)
                        .append('\n');
            }
        });
        KeptFile.writeSummed(place, lines.toString().getBytes(StandardCharsets.UTF_8));
        changed = false;
    }

    private void recall(String line) {
        String[] parts = line.split("\t", 3);
        if (parts.length == 3 && parts[0].matches("[0-9a-f]{64}")) {
            known.put(parts[2], new Known(parts[1], parts[0]));
        }
    }
}
