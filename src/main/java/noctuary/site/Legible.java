package noctuary.site;

/**
 * Text without what no page may hold: control characters other than white space, noncharacters, halves of pairs. The
 * keeper's words and file names can hold all of them. (HTML standard, section 13.2.3.5, preprocessing the input stream.)
 */
final class Legible {
    private static final char STRANGE = '\uFFFD';

    private Legible() {}

    static String text(String text) {
        int first = 0;
        while (first < text.length() && isPlain(text.charAt(first))) {
            first++;
        }
        if (first == text.length()) {
            return text;
        }
        StringBuilder legible = new StringBuilder(text.length()).append(text, 0, first);
        text.substring(first).codePoints().forEach(c -> legible.appendCodePoint(isAllowed(c) ? c : STRANGE));
        return legible.toString();
    }

    /** Without looking at neighbours; most text is nothing else. */
    private static boolean isPlain(char c) {
        return c >= ' ' && c < 0x7f || c >= 0xa0 && c < Character.MIN_SURROGATE || c == '\n';
    }

    private static boolean isAllowed(int c) {
        boolean white = c == '\n' || c == '\t' || c == '\r' || c == '\f';
        boolean noncharacter = (c & 0xfffe) == 0xfffe || c >= 0xfdd0 && c <= 0xfdef;
        boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return white || !Character.isISOControl(c) && !noncharacter && !half;
    }
}
