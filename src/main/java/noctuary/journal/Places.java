package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import noctuary.entry.NoteWords;
import noctuary.keep.Branches;
import noctuary.keep.Digest;
import noctuary.keep.Glance;
import noctuary.keep.Memo;

/** Where a journal keeps what the tool writes. */
final class Places {
    private Places() {}

    /** Measurements and previews; may be deleted at any time. */
    static Path cache(Path root) {
        return root.resolve(".noctuary");
    }

    /**
     * @throws RefusedException when something that is no folder has the cache's name, or when it or something in it is a
     *     link: what is kept is also cleared away, and a journal from elsewhere could lead that anywhere
     */
    static void refuseBlockedCache(Path root) throws RefusedException {
        Path cache = cache(root);
        if (Files.exists(cache, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(cache)) {
            throw new RefusedException(
                    cache + " is not a folder, and measurements are kept in a folder of that name; move it away");
        }
        for (Path place : cached(cache)) {
            if (Files.isSymbolicLink(place)) {
                throw new RefusedException(
                        place + " is a link, and what is kept there is never kept elsewhere; delete the link");
            }
        }
    }

    private static List<Path> cached(Path cache) throws RefusedException {
        if (!Files.isDirectory(cache, LinkOption.NOFOLLOW_LINKS)) {
            return List.of(cache);
        }
        try (Stream<Path> inside = Files.list(cache)) {
            return inside.toList();
        } catch (IOException e) {
            throw new RefusedException(cache + " cannot be read; check that you may read it");
        }
    }

    /** The record of the last render into a folder. */
    static Path standing(Path root, Path output) {
        String place = output.toAbsolutePath().normalize().toString();
        return cache(root)
                .resolve("standing")
                .resolve(new Digest().text(place).hex().substring(0, 32));
    }

    /** What this program worked out before. */
    static Memo memo(Path root) {
        return Memo.in(cache(root).resolve("worked-out"), Program.build());
    }

    /** What a render reads beside the notes looks like, except for what they lead to elsewhere; and the program. */
    static String rest(Path root) throws IOException {
        return Glance.ofTree(ownTemplates(root), root.toRealPath()) + " " + Program.identity();
    }

    /** What the notes and all beside them look like. */
    static Branches entries(Path root) {
        Path entries = root.resolve("entries");
        try {
            return Glance.branches(entries, root.toRealPath(), NoteWords::isNote);
        } catch (IOException e) {
            return Branches.unknown(entries);
        }
    }

    static Path ownTemplates(Path root) {
        return root.resolve("site-templates");
    }
}
