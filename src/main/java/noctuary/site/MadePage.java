package noctuary.site;

/**
 * A page that is not an entry's, as it was made.
 *
 * @param path from the top folder
 * @param shown stands for all that it shows
 */
public record MadePage(String path, PageKind kind, String shown) {}
