package noctuary.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import noctuary.keep.Packing;
import noctuary.site.MadePage;
import noctuary.site.MadeSite;
import noctuary.site.ToldEntry;

/**
 * What the last render left for one after which only templates or style sheets are others.
 *
 * @param site what the site looked like when it was finished
 * @param read what it was made from looked like, but for templates
 * @param pages all but those of entries
 */
record Styling(String site, String read, List<ToldEntry> entries, List<MadePage> pages) {
    private static final Packing<Styling> PACKING = Packing.withGaps(Styling.class);

    static Styling of(String site, String read, MadeSite made) {
        return new Styling(site, read, made.told(), made.pages());
    }

    /** The same after the site was made again. */
    Styling seen(String newSite) {
        return new Styling(newSite, read, entries, pages);
    }

    static Optional<Styling> find(Path place) {
        return PACKING.find(place);
    }

    void keep(Path place) {
        PACKING.keep(place, this);
    }
}
