package noctuary.site.page;

/** @param href relative to the page, percent-encoded; empty for plain text */
public record Link(String text, String href, boolean here) {
    public static Link of(String text, String href) {
        return new Link(text, href, false);
    }

    public static Link plain(String text) {
        return new Link(text, "", false);
    }
}
