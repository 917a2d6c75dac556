package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import noctuary.site.Draft;
import noctuary.site.Former;
import noctuary.site.Piece;
import noctuary.site.RestyledPages;

/**
 * A render after which only templates or style sheets are others: every page is made again from what it was kept to show,
 * and all else of the site stays.
 */
record Restyling(Path root, Path output, Styling kept) {

    /**
     * Puts the site with its new pages in the place of the old one.
     *
     * @return its pieces by name; empty, and nothing done, when something that is needed was not kept
     * @throws IOException when it cannot be written; the site stands as it was
     */
    Optional<Map<String, Piece>> make(ShownFiles shown) throws IOException, RefusedException {
        RestyledPages pages =
                new RestyledPages(kept.entries(), kept.pages(), Places.memo(root), Places.ownTemplates(root));
        Publication publication = Publication.begin(root, output, shown);
        try {
            Former standing = Former.at(output, shown.findAll(kept.site()));
            Draft draft = Draft.of(publication.draft(), publication.earlier(), standing);
            if (!pages.write(draft)) {
                return Optional.empty();
            }
            draft.clear();
            publication.publish();
            return Optional.of(draft.pieces());
        } finally {
            publication.abandon();
        }
    }
}
