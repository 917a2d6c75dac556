package noctuary.site;

import java.util.Set;

/** Keeps a number and its unit, or a value and its error, on one line of a page. */
final class Unbroken {
    private static final char NO_BREAK_SPACE = '\u00a0';

    private static final Set<String> UNITS = Set.of(
            "%",
            "±",
            "mm",
            "cm",
            "m",
            "µm",
            "nm",
            "px",
            "arcsec",
            "arcmin",
            "arcsec/px",
            "h",
            "min",
            "s",
            "e",
            "ADU",
            "e/ADU",
            "mag",
            "kg",
            "g",
            "°C",
            "EUR");

    /** Elements whose text is a quotation, or is compared with what another element holds. */
    private static final String[] LEFT_ALONE = {"code", "pre", "kbd", "script", "style", "option", "title"};

    private static final int LETTERS = 0x7f;

    private static final int LATIN = 0x100;

    /** By their first letter. */
    private static final String[][] UNITS_FROM = unitsFrom();

    /** By their first two letters: nearly no tag begins like them. */
    private static final boolean[][] BEGINNINGS = beginnings();

    private Unbroken() {}

    private static String[][] unitsFrom() {
        String[][] units = new String[LATIN][];
        for (int c = 0; c < LATIN; c++) {
            char first = (char) c;
            units[c] = UNITS.stream().filter(unit -> unit.charAt(0) == first).toArray(String[]::new);
        }
        return units;
    }

    private static boolean[][] beginnings() {
        boolean[][] beginnings = new boolean[LETTERS + 1][LETTERS + 1];
        for (String name : LEFT_ALONE) {
            beginnings[name.charAt(0)][name.charAt(1)] = true;
        }
        return beginnings;
    }

    /**
     * Joins in place.
     *
     * @param html a whole page; its tags and attributes stay as they are
     * @param length of the page, from the first character on
     */
    static void join(char[] html, int length) {
        int at = 0;
        int from = 0;
        while (at < length) {
            char c = html[at];
            if (c == '<') {
                at = afterTag(html, at, length);
                from = at;
            } else {
                if (c == ' ' && at > from && joins(html, at, length)) {
                    html[at] = NO_BREAK_SPACE;
                }
                at++;
            }
        }
    }

    /** Behind the tag; of an element that is left alone, before its end tag. */
    private static int afterTag(char[] html, int tag, int length) {
        int end = find('>', html, tag, length);
        if (end == length) {
            return length;
        }
        if (end < tag + 2) {
            return end + 1;
        }
        String name = leftAlone(html, tag + 1, length);
        if (name.isEmpty()) {
            return end + 1;
        }
        int close = find('<', html, end, length);
        while (close < length && !isEndOf(name, html, close + 1, length)) {
            close = find('<', html, close + 1, length);
        }
        return close;
    }

    /** The name of the element that begins there, if it is one of those. */
    private static String leftAlone(char[] html, int from, int length) {
        if (!BEGINNINGS[html[from] & LETTERS][html[from + 1] & LETTERS]) {
            return "";
        }
        for (String name : LEFT_ALONE) {
            if (isAt(name, html, from, length) && !Character.isLetter(html[from + name.length()])) {
                return name;
            }
        }
        return "";
    }

    private static boolean isEndOf(String name, char[] html, int from, int length) {
        return from < length && html[from] == '/' && isAt(name, html, from + 1, length);
    }

    private static boolean isAt(String word, char[] html, int from, int length) {
        if (from + word.length() >= length) {
            return false;
        }
        for (int i = 0; i < word.length(); i++) {
            if (html[from + i] != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Where the sign stands next; the length where it does not. */
    private static int find(char sign, char[] html, int from, int length) {
        int at = from;
        while (at < length && html[at] != sign) {
            at++;
        }
        return at;
    }

    /** Whether the space stands before a unit or behind the sign of an error. */
    private static boolean joins(char[] text, int space, int length) {
        char before = text[space - 1];
        return before == '±' && space + 1 < length && text[space + 1] != '<'
                || isDigit(before) && isUnit(text, space + 1, length);
    }

    private static boolean isUnit(char[] text, int from, int length) {
        if (from >= length || text[from] >= LATIN) {
            return false;
        }
        for (String unit : UNITS_FROM[text[from]]) {
            int end = from + unit.length();
            if (isAt(unit, text, from, length + 1) && (end == length || isEnd(text[end]))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isEnd(char c) {
        return c == '<'
                || c == ' '
                || c == '\n'
                || c == '.'
                || c == ','
                || c == ';'
                || c == ':'
                || c == ')'
                || c == NO_BREAK_SPACE;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
