package noctuary.site.page;

/** A number with its label, both as printed. */
public record Labelled(String label, String value) {}
