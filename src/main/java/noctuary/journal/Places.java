package noctuary.journal;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Where a journal keeps what the tool writes. */
final class Places {
    private Places() {}

    /** Measurements and previews; may be deleted at any time. */
    static Path cache(Path root) {
        return root.resolve(".noctuary");
    }

    /** @throws RefusedException when something that is no folder has the cache's name */
    static void refuseBlockedCache(Path root) throws RefusedException {
        Path cache = cache(root);
        if (Files.exists(cache, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(cache)) {
            throw new RefusedException(
                    cache + " is not a folder, and measurements are kept in a folder of that name; move it away");
        }
    }

    static Path ownTemplates(Path root) {
        return root.resolve("site-templates");
    }
}
