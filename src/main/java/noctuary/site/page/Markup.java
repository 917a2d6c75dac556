package noctuary.site.page;

/** HTML or SVG that is known to be safe and is printed as it stands; everything else a template prints is escaped. */
public record Markup(String html) {
    public static final Markup NONE = new Markup("");
}
