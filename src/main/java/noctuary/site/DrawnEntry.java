package noctuary.site;

/**
 * An entry whose page was drawn without its note's words.
 *
 * @param key under which the page was kept; empty when the page depends on the words in other ways
 */
public record DrawnEntry(String slug, String title, String key) {}
