package noctuary.serve;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Files of the site by the path of an address; whatever leads out of the folder is not there. */
final class SiteFiles {
    private static final Map<String, String> TYPES = Map.ofEntries(
            Map.entry("html", "text/html; charset=utf-8"),
            Map.entry("css", "text/css; charset=utf-8"),
            Map.entry("js", "text/javascript; charset=utf-8"),
            Map.entry("json", "application/json"),
            Map.entry("csv", "text/csv; charset=utf-8"),
            Map.entry("svg", "image/svg+xml"),
            Map.entry("jpg", "image/jpeg"),
            Map.entry("png", "image/png"),
            Map.entry("gif", "image/gif"),
            Map.entry("webp", "image/webp"));

    /** A site is replaced by renaming: for a moment there may be none. */
    private static final int TRIES = 5;

    private static final long BETWEEN_TRIES_MS = 40;

    private final Path site;

    SiteFiles(Path site) {
        this.site = site;
    }

    record Found(byte[] bytes, String type, boolean folderWithoutSlash) {
        boolean isPage() {
            return type.startsWith("text/html");
        }
    }

    /** @param address path of the request, percent signs decoded */
    Optional<Found> find(String address) throws IOException {
        for (int i = 0; i < TRIES && !Files.isDirectory(site); i++) {
            try {
                Thread.sleep(BETWEEN_TRIES_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            }
        }
        try {
            return read(address);
        } catch (InvalidPathException | FileSystemException e) {
            return Optional.empty();
        }
    }

    private Optional<Found> read(String address) throws IOException {
        Path root = site.toRealPath();
        Path asked = root.resolve(address.replaceFirst("^/+", "")).normalize();
        if (!asked.startsWith(root) || hidden(root.relativize(asked))) {
            return Optional.empty();
        }
        if (Files.isDirectory(asked)) {
            return address.endsWith("/")
                    ? file(root, asked.resolve("index.html"))
                    : Optional.of(new Found(new byte[0], "", true));
        }
        return file(root, asked);
    }

    private static Optional<Found> file(Path root, Path file) throws IOException {
        Path real = file.toRealPath();
        if (!real.startsWith(root) || !Files.isRegularFile(real)) {
            return Optional.empty();
        }
        return Optional.of(new Found(Files.readAllBytes(real), type(real), false));
    }

    private static boolean hidden(Path relative) {
        for (Path step : relative) {
            if (step.toString().startsWith(".")) {
                return true;
            }
        }
        return false;
    }

    private static String type(Path file) {
        String name = file.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return TYPES.getOrDefault(ending, "application/octet-stream");
    }
}
