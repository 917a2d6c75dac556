package noctuary.journal;

/** A call that cannot be carried out as asked; the message says why, for the keeper. */
public final class RefusedException extends Exception {
    private static final long serialVersionUID = 1L;

    public RefusedException(String message) {
        super(message);
    }
}
