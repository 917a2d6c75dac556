package noctuary.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Every file of a site, byte by byte. */
final class SiteBytes {
    private SiteBytes() {}

    /** By path from the top folder, a letter a byte. */
    static Map<String, String> of(Path site) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(site)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(
                        site.relativize(file).toString(),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }
}
