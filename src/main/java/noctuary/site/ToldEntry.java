package noctuary.site;

import noctuary.site.page.EntryPage;
import noctuary.site.page.Link;
import noctuary.site.page.Markup;

/**
 * What an entry's page was told beside what was drawn without its note's words.
 *
 * @param key under which the page without words was kept; empty when a file of the entry has no identity
 * @param shown stands for all that the page shows
 * @param older null where there is none, as {@code newer}
 */
public record ToldEntry(String slug, String key, String shown, Markup words, Link older, Link newer) {
    EntryPage on(EntryPage page) {
        return page.telling(words, older, newer);
    }
}
