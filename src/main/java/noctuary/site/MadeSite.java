package noctuary.site;

import java.util.List;

/**
 * A site as it was written.
 *
 * @param entries in the order of their pages
 * @param told the same
 * @param pages all others
 */
public record MadeSite(List<DrawnEntry> entries, List<ToldEntry> told, List<MadePage> pages) {
    public MadeSite {
        entries = List.copyOf(entries);
        told = List.copyOf(told);
        pages = List.copyOf(pages);
    }
}
