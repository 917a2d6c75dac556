package noctuary.review;

/** What may differ between two sides beside the change itself. */
public enum Influence {
    AIRMASS("airmass"),
    MOON("Moon"),
    SEASON("season"),
    TARGET("target"),
    SITE("site"),
    RIG("rig"),
    FILTER("filter"),
    /** Of a picture, beside the choice in question. */
    STEPS("other steps");

    private final String word;

    Influence(String word) {
        this.word = word;
    }

    /** As printed inside a sentence. */
    public String word() {
        return word;
    }
}
