package noctuary.keep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What files and folders look like from outside, as a word that differs when they have changed: of a file its size, time
 * and place on the disk, of a folder the names in it that are not hidden. A file whose content changed while none of these did is taken for
 * unchanged, as it is when frames are looked up in the cache.
 */
public final class Glance {
    private Glance() {}

    /** At one place, through links; there may be nothing. */
    public static String at(Path place) {
        try {
            BasicFileAttributes a = Files.readAttributes(place, BasicFileAttributes.class);
            return a.isDirectory() ? names(place) : stamp(a);
        } catch (IOException e) {
            return "nothing";
        }
    }

    /** At a folder with all that is in it; links are followed to files, and to folders inside {@code bounds}. */
    public static String ofTree(Path folder, Path bounds) {
        return branches(folder, bounds).whole();
    }

    /** As {@link #ofTree}, of a folder that this program wrote; empty when it is missing, or a link is in it or it is one. */
    public static String ofOwn(Path folder) {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return "";
        }
        TreeGlance walk = new TreeGlance(folder, place -> false);
        Branches looks = walk.of(folder);
        return walk.sawLink() || !looks.trouble().isEmpty() ? "" : looks.whole();
    }

    static Branches branches(Path folder, Path bounds) {
        return branches(folder, bounds, place -> false);
    }

    /**
     * As {@link #ofTree}, part by part.
     *
     * @param apart whether a file, by its place in the folder, is to be told apart from all that is beside it
     */
    public static Branches branches(Path folder, Path bounds, Predicate<Path> apart) {
        return new TreeGlance(bounds, apart).of(folder);
    }

    static String stamp(BasicFileAttributes a) {
        return a.size() + " " + a.lastModifiedTime().to(TimeUnit.NANOSECONDS) + " " + a.fileKey();
    }

    private static String names(Path folder) throws IOException {
        Digest digest = new Digest();
        try (Stream<Path> all = Files.list(folder)) {
            all.map(p -> p.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .forEach(digest::text);
        }
        return digest.hex();
    }
}
