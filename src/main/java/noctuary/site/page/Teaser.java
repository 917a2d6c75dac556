package noctuary.site.page;

/** An entry with its picture. @param plate null when there is no picture */
public record Teaser(Link entry, String target, String night, String nightIso, String figures, Plate plate) {}
