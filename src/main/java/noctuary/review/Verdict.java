package noctuary.review;

/** What the nights allow to be said of one measure. */
public enum Verdict {
    BETTER("better"),
    WORSE("worse"),
    NO_DIFFERENCE("no-difference"),
    TOO_FEW("too-few"),
    CONFOUNDED("confounded");

    private final String id;

    Verdict(String id) {
        this.id = id;
    }

    /** The word used in the downloads. */
    public String id() {
        return id;
    }
}
