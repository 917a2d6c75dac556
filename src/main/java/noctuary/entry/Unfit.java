package noctuary.entry;

/** A typed value that cannot be used: the message says what was found, the hint what to write instead. */
final class Unfit extends Exception {
    private static final long serialVersionUID = 1;

    private final String hint;

    Unfit(String what, String hint) {
        super(what, null, false, false);
        this.hint = hint;
    }

    String hint() {
        return hint;
    }
}
