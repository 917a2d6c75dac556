package noctuary.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import noctuary.entry.Journal;
import noctuary.keep.Branches;
import noctuary.keep.Packing;
import noctuary.site.DrawnEntry;

/**
 * What the last render left for one after which only the words of a note are others.
 *
 * @param site what the site looked like when it was finished
 * @param rest what else a render reads looked like, and the program
 * @param branches of the folder of the notes
 * @param besides the same without the notes themselves
 * @param facts of each note, by slug
 * @param leanedOn branches in which notes of others looked for something
 * @param entries in the order of their pages
 */
record Wording(
        String site,
        String rest,
        Map<String, String> branches,
        Map<String, String> besides,
        Map<String, String> facts,
        Set<String> leanedOn,
        List<DrawnEntry> entries) {
    private static final Packing<Wording> PACKING = Packing.of(Wording.class);

    static Wording of(String site, String rest, Journal journal, List<DrawnEntry> entries) {
        Branches looks = journal.looks();
        return new Wording(
                site,
                rest,
                looks.digests(),
                looks.besides(),
                journal.facts().bySlug(),
                journal.facts().leanedOn().stream().map(Path::toString).collect(Collectors.toSet()),
                entries);
    }

    /** The same after other words were put into the site. */
    Wording seen(Branches looks, String newSite) {
        return new Wording(newSite, rest, looks.digests(), looks.besides(), facts, leanedOn, entries);
    }

    /** The same after the site was made again from others of the rest. */
    Wording restyled(String newSite, String newRest) {
        return new Wording(newSite, newRest, branches, besides, facts, leanedOn, entries);
    }

    static Optional<Wording> find(Path place) {
        return PACKING.find(place);
    }

    void keep(Path place) {
        PACKING.keep(place, this);
    }
}
