package noctuary.cli;

import noctuary.journal.Progress;

/**
 * Progress of a render that Java was told to start quickly for ({@code src/main/launcher/noctuary}): it compiles little,
 * which suits everything but measuring. When there is more than a little to measure, the call is given back to be started
 * again; what was measured so far is kept.
 */
final class QuickLook implements Progress {
    /** Exit status that asks to be started again: EX_TEMPFAIL of {@code sysexits.h}. */
    static final int AGAIN = 75;

    private static final String PROPERTY = "noctuary.quick";
    private static final int MOST = 3;

    private final Progress shown;

    private QuickLook(Progress shown) {
        this.shown = shown;
    }

    static final class TooMuchException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** As {@code shown} unless the launcher said that this is a quick start. */
    static Progress of(Progress shown) {
        return Boolean.getBoolean(PROPERTY) ? new QuickLook(shown) : shown;
    }

    @Override
    public void at(String what, int done, int total) {
        shown.at(what, done, total);
    }

    @Override
    public void measured(int files) {
        if (files >= MOST) {
            throw new TooMuchException();
        }
    }
}
