package noctuary.site;

import java.util.Set;

/** Keeps a number and its unit, or a value and its error, on one line of a page. */
final class Unbroken {
    private static final char NO_BREAK_SPACE = '\u00a0';

    private static final int LONGEST_UNIT = 10;

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
    private static final Set<String> LEFT_ALONE = Set.of("code", "pre", "kbd", "script", "style", "option", "title");

    private Unbroken() {}

    /** @param html a whole page; its tags and attributes stay as they are */
    static String of(String html) {
        char[] text = html.toCharArray();
        int at = 0;
        while (at < text.length) {
            int tag = html.indexOf('<', at);
            int end = tag < 0 ? text.length : tag;
            join(text, at, end);
            at = tag < 0 ? text.length : afterTag(html, tag);
        }
        return new String(text);
    }

    /** Behind the tag; of an element that is left alone, before its end tag. */
    private static int afterTag(String html, int tag) {
        int end = html.indexOf('>', tag);
        if (end < 0) {
            return html.length();
        }
        String name = word(html, tag + 1);
        if (!LEFT_ALONE.contains(name)) {
            return end + 1;
        }
        int close = html.indexOf("</" + name, end);
        return close < 0 ? html.length() : close;
    }

    private static String word(String html, int from) {
        int to = from;
        while (to < html.length() && Character.isLetter(html.charAt(to))) {
            to++;
        }
        return html.substring(from, to);
    }

    private static void join(char[] text, int from, int to) {
        for (int i = from + 1; i < to - 1; i++) {
            if (text[i] == ' ' && (text[i - 1] == '±' || isDigit(text[i - 1]) && isUnit(text, i + 1, to))) {
                text[i] = NO_BREAK_SPACE;
            }
        }
    }

    private static boolean isUnit(char[] text, int from, int to) {
        int end = from;
        while (end < to && end - from <= LONGEST_UNIT && !isEnd(text[end])) {
            end++;
        }
        return UNITS.contains(new String(text, from, end - from));
    }

    private static boolean isEnd(char c) {
        return c == ' ' || c == '\n' || c == '.' || c == ',' || c == ';' || c == ':' || c == ')' || c == NO_BREAK_SPACE;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
