package noctuary.fact;

/**
 * Something the keeper should see: where, what, and what to do about it.
 *
 * @param file as the keeper would name it, relative to the journal where it lies inside
 * @param place within the file, such as {@code line 7, key reducer} or {@code card EXPTIME}; empty for the whole file
 */
public record Problem(Severity severity, String file, String place, String what, String hint) {
    /** FAULT: an input could not be used as it stands (exit status 1). NOTICE: worth a look, nothing was lost. */
    public enum Severity {
        FAULT,
        NOTICE
    }

    public static Problem fault(String file, String place, String what, String hint) {
        return new Problem(Severity.FAULT, file, place, what, hint);
    }

    public static Problem notice(String file, String place, String what, String hint) {
        return new Problem(Severity.NOTICE, file, place, what, hint);
    }

    public boolean isFault() {
        return severity == Severity.FAULT;
    }

    /** File and place in one phrase, such as {@code entries/m27.md, line 7, key rig}. */
    public String where() {
        return place.isEmpty() ? file : file + ", " + place;
    }
}
