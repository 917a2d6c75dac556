package noctuary.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import noctuary.keep.Glance;
import noctuary.keep.Packing;
import noctuary.site.Piece;

/**
 * The record of what the files of a site show, beside that of the render that wrote them.
 *
 * @param place of the record
 * @param maker program and own templates, as they were before the render began
 */
record ShownFiles(Path place, String maker) {
    /**
     * @param looks what the site looked like when it was finished
     * @param pieces all that is in it, by name
     */
    private record Kept(String maker, String looks, Map<String, Piece> pieces) {
        static final Packing<Kept> PACKING = Packing.of(Kept.class);
    }

    static ShownFiles of(Path root, Path output) {
        Path standing = Places.standing(root, output);
        Path templates = Places.ownTemplates(root);
        return new ShownFiles(
                standing.resolveSibling(standing.getFileName() + "-files"),
                Program.build() + " " + Glance.ofTree(templates, templates));
    }

    /** The record of the site before. */
    ShownFiles ofSpare() {
        return new ShownFiles(place.resolveSibling(place.getFileName() + "-before"), maker);
    }

    /**
     * Pieces of the site by name; none when it is not as it was left.
     *
     * @param looks what it looks like now
     */
    Map<String, Piece> find(String looks) {
        return kept(looks)
                .map(kept -> kept.maker().equals(maker) ? kept.pieces() : picturesOf(kept.pieces()))
                .orElse(Map.of());
    }

    /** As {@link #find}, whichever templates they were made by. */
    Map<String, Piece> findAll(String looks) {
        return kept(looks).map(Kept::pieces).orElse(Map.of());
    }

    void keep(String looks, Map<String, Piece> pieces) {
        write(new Kept(maker, looks, pieces));
    }

    /** Some files were put into the site that stands: what they show is not known any more. */
    void forget(Set<String> paths, String looks) {
        kept().ifPresent(kept -> {
            Map<String, Piece> others = new TreeMap<>(kept.pieces());
            paths.forEach(path -> others.replace(path, new Piece("", List.of(path))));
            write(new Kept(kept.maker(), looks, others));
        });
    }

    /** What another program or other templates made shows nothing that is known; pictures stand for themselves. */
    static Map<String, Piece> picturesOf(Map<String, Piece> pieces) {
        Map<String, Piece> others = new TreeMap<>();
        pieces.forEach((name, piece) -> {
            boolean made = piece.files().equals(List.of(name));
            others.put(name, made ? new Piece("", piece.files()) : piece);
        });
        return others;
    }

    private void write(Kept kept) {
        Kept.PACKING.keep(place, kept);
    }

    private Optional<Kept> kept(String looks) {
        return kept().filter(kept -> !looks.isEmpty() && kept.looks().equals(looks));
    }

    private Optional<Kept> kept() {
        return Kept.PACKING.find(place);
    }
}
