package noctuary.journal;

import java.nio.file.Path;

/** Where a journal keeps what the tool writes. */
final class Places {
    private Places() {}

    /** Measurements and previews; may be deleted at any time. */
    static Path cache(Path root) {
        return root.resolve(".noctuary");
    }

    static Path ownTemplates(Path root) {
        return root.resolve("site-templates");
    }
}
