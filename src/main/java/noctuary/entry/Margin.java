package noctuary.entry;

import noctuary.fact.Problem;

/** The problems of one file, up to a number that a person can read. */
final class Margin {
    private static final int MOST = 100;
    private static final int LONGEST = 60;

    private final String file;
    private final Ledger ledger;
    private int written;

    Margin(String file, Ledger ledger) {
        this.file = file;
        this.ledger = ledger;
    }

    String file() {
        return file;
    }

    /** @param line from 1, or 0 for the whole file */
    void fault(int line, String key, String what, String hint) {
        write(line, Problem.fault(file, place(line, key), what, hint));
    }

    void fault(int line, String key, Unfit unfit) {
        fault(line, key, unfit.getMessage(), unfit.hint());
    }

    void notice(int line, String key, String what, String hint) {
        write(line, Problem.notice(file, place(line, key), what, hint));
    }

    private void write(int line, Problem problem) {
        written++;
        if (written < MOST) {
            ledger.add(line, problem);
        } else if (written == MOST) {
            ledger.add(
                    Integer.MAX_VALUE,
                    Problem.fault(file, "", "more problems than are listed here", "mend these first, then look again"));
        }
    }

    private static String place(int line, String key) {
        if (line == 0) {
            return "";
        }
        return "line " + line + (key.isEmpty() ? "" : ", key " + shortened(key));
    }

    /** A piece of the keeper's text for a message: one line, of bounded length, in double quotes. */
    static String quoted(String text) {
        return '"' + shortened(text) + '"';
    }

    static String shortened(String text) {
        String cut = text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
        return cut.replaceAll("\\p{Cntrl}", " ");
    }
}
