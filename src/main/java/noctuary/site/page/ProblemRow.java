package noctuary.site.page;

/** Something the keeper should see. */
public record ProblemRow(boolean fault, String where, String what, String hint) {}
