package noctuary.fits;

/** A file that gives no image: the message says what is wrong, {@link #hint} what to do, both for the keeper. */
public final class UnreadableException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String hint;

    public UnreadableException(String what, String hint) {
        super(what);
        this.hint = hint;
    }

    public String hint() {
        return hint;
    }
}
