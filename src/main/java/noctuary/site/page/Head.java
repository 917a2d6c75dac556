package noctuary.site.page;

import java.util.List;

/**
 * What every page starts with.
 *
 * @param root relative way from this page to the site's top folder: empty or ending in a slash
 * @param journal title of the journal
 * @param stylesheets relative to the page, in order
 * @param published what it says of itself to the web; null for a journal that stays at home
 * @param nav one link a section, the current one marked
 */
public record Head(
        String title,
        String description,
        String root,
        String journal,
        String keeper,
        List<String> stylesheets,
        Published published,
        List<Link> nav) {
    public Head {
        stylesheets = List.copyOf(stylesheets);
        nav = List.copyOf(nav);
    }

    /**
     * Whole addresses on the web.
     *
     * @param type {@code article} for an entry, else {@code website}
     * @param feed of the journal; empty when no entry tells its night
     * @param card the picture beside a link, or null
     */
    public record Published(String address, String type, String feed, Card card) {}

    public record Card(String address, int width, int height, String alt) {}
}
