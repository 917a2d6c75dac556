package noctuary.site.page;

import java.util.List;

/**
 * What every page starts with.
 *
 * @param root relative way from this page to the site's top folder: empty or ending in a slash
 * @param journal title of the journal
 * @param stylesheets relative to the page, in order
 * @param nav one link a section, the current one marked
 */
public record Head(
        String title,
        String description,
        String root,
        String journal,
        String keeper,
        List<String> stylesheets,
        List<Link> nav) {
    public Head {
        stylesheets = List.copyOf(stylesheets);
        nav = List.copyOf(nav);
    }
}
