package noctuary.measure;

import java.nio.file.Path;

/**
 * The file that stands for an entry.
 *
 * @param content identity of its bytes; empty when it is not told
 * @param stars found on it
 */
public record ShownFile(Path path, String name, String content, int stars, boolean readable) {
    static ShownFile of(FrameSheet file) {
        return new ShownFile(
                file.path(),
                file.name(),
                file.measurement().content(),
                file.stars().size(),
                file.measurement().readable());
    }
}
