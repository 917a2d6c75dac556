package noctuary.review;

/** What the nights allow to be said of one measure. */
public enum Verdict {
    BETTER("better", "better"),
    WORSE("worse", "worse"),
    NO_DIFFERENCE("no-difference", "no difference seen"),
    TOO_FEW("too-few", "too few nights"),
    CONFOUNDED("confounded", "confounded");

    private final String id;
    private final String words;

    Verdict(String id, String words) {
        this.id = id;
        this.words = words;
    }

    /** The word used in the downloads. */
    public String id() {
        return id;
    }

    /** For a reader. */
    public String words() {
        return words;
    }
}
