package noctuary.cli;

import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.util.Locale;
import noctuary.journal.Progress;

/** One line on a terminal that says how far the work is and how long it may still take; nothing elsewhere. */
final class ProgressLine implements Progress {
    private static final long SHOW_EVERY_NANOS = 100_000_000L;

    private final PrintWriter err;
    private String work = "";
    private long started;
    private long shown;

    private ProgressLine(PrintWriter err) {
        this.err = err;
    }

    static Progress on(PrintWriter err) {
        return isTerminal() ? new ProgressLine(err) : SILENT;
    }

    @Override
    public synchronized void at(String what, int done, int total) {
        long now = System.nanoTime();
        if (!what.equals(work)) {
            work = what;
            started = now;
        }
        if (done == total) {
            err.print("\r\u001b[K");
            err.flush();
        } else if (now - shown > SHOW_EVERY_NANOS) {
            shown = now;
            err.print("\r\u001b[K" + what + " " + done + " of " + total + left(now - started, done, total));
            err.flush();
        }
    }

    private static String left(long nanos, int done, int total) {
        if (done == 0) {
            return "";
        }
        long seconds = Math.round(nanos / 1e9 * (total - done) / done);
        return seconds < 90
                ? ", about " + seconds + " s left"
                : String.format(Locale.ROOT, ", about %d min left", Math.round(seconds / 60.0));
    }

    /** From Java 22 on a console may stand for a pipe, and says so itself. */
    private static boolean isTerminal() {
        if (System.console() == null) {
            return false;
        }
        try {
            return (Boolean) java.io.Console.class.getMethod("isTerminal").invoke(System.console());
        } catch (NoSuchMethodException e) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException e) {
            return false;
        }
    }
}
