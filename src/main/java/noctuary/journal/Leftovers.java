package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What a render that was killed left beside the site. */
final class Leftovers {
    private static final String DRAFT = "-draft-";
    private static final String OLD = "-old";

    private Leftovers() {}

    static String draftPrefix(Path output) {
        return "." + output.getFileName() + DRAFT;
    }

    /** Where the old site waits while the new one takes its name. */
    static Path oldSite(Path draft) {
        return draft.resolveSibling(draft.getFileName() + OLD);
    }

    /**
     * Gives the old site its name back when a render died just between the two renames, and deletes drafts. To be
     * called by the only render at work.
     */
    static void clear(Path output) throws IOException {
        Path parent = output.getParent();
        if (!Files.isDirectory(parent)) {
            return;
        }
        for (Path draft : drafts(parent, draftPrefix(output))) {
            if (draft.getFileName().toString().endsWith(OLD) && !Files.exists(output)) {
                Files.move(draft, output);
            } else {
                FolderTree.delete(draft);
            }
        }
    }

    private static List<Path> drafts(Path folder, String prefix) throws IOException {
        try (Stream<Path> beside = Files.list(folder)) {
            return beside.filter(p -> p.getFileName().toString().startsWith(prefix))
                    .toList();
        }
    }
}
