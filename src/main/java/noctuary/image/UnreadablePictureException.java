package noctuary.image;

/** A file that gives no picture: the message says what is wrong, {@link #hint} what to do, both for the keeper. */
public final class UnreadablePictureException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String hint;

    public UnreadablePictureException(String what, String hint) {
        super(what);
        this.hint = hint;
    }

    public String hint() {
        return hint;
    }
}
