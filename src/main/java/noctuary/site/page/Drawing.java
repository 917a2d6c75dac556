package noctuary.site.page;

/** A chart with its caption. */
public record Drawing(String caption, Markup svg) {}
