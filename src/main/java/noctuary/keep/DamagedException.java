package noctuary.keep;

/** Kept bytes are not what was written. */
final class DamagedException extends RuntimeException {
    private static final long serialVersionUID = 1;
}
