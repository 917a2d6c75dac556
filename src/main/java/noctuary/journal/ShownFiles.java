package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import noctuary.keep.Glance;
import noctuary.keep.KeptFile;
import noctuary.keep.Packing;
import noctuary.site.Former;

/**
 * The record of what the files of a site show, beside that of the render that wrote them.
 *
 * @param maker program and own templates, as they were before the render began
 */
record ShownFiles(Path output, Path place, String maker) {
    private record Kept(String maker, Map<String, String> shown) {
        static final Packing<Kept> PACKING = Packing.of(Kept.class);
    }

    static ShownFiles of(Path root, Path output) {
        Path standing = Places.standing(root, output);
        Path templates = Places.ownTemplates(root);
        return new ShownFiles(
                output,
                standing.resolveSibling(standing.getFileName() + "-files"),
                Program.build() + " " + Glance.ofTree(templates, templates));
    }

    /** The site as it was left; nothing is taken over from another program or other templates. */
    Former find() {
        return kept().map(kept -> Former.at(output, kept.shown())).orElseGet(Former::none);
    }

    void keep(Former former) {
        keep(former.shown());
    }

    private void keep(Map<String, String> shown) {
        KeptFile.writeSummed(place, Kept.PACKING.pack(new Kept(maker, shown)));
    }

    /** Some files were put into the site that stands: what they show is not known any more. */
    void forget(Set<String> paths) {
        kept().ifPresent(kept -> {
            Map<String, String> others = new TreeMap<>(kept.shown());
            others.keySet().removeAll(paths);
            keep(others);
        });
    }

    private Optional<Kept> kept() {
        try {
            return Kept.PACKING
                    .unpack(KeptFile.readSummed(place))
                    .filter(kept -> kept.maker().equals(maker));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
