package noctuary.site;

/**
 * Text without what no page may hold: control characters other than white space, noncharacters, halves of pairs. The
 * keeper's words and file names can hold all of them. (HTML standard, section 13.2.3.5, preprocessing the input stream.)
 */
final class Legible {
    private static final char STRANGE = '\uFFFD';

    /** Of the first characters those that are allowed whatever stands beside them. */
    private static final boolean[] PLAIN = plain();

    private Legible() {}

    /**
     * Mends the text in its place.
     *
     * @param length of the text, from the first character on
     * @return its length then
     */
    static int mend(char[] text, int length) {
        int first = 0;
        while (first < length && isPlain(text[first])) {
            first++;
        }
        int to = first;
        int at = first;
        while (at < length) {
            int c = Character.codePointAt(text, at, length);
            at += Character.charCount(c);
            to += Character.toChars(isAllowed(c) ? c : STRANGE, text, to);
        }
        return to;
    }

    private static boolean[] plain() {
        boolean[] plain = new boolean[0x100];
        for (int c = 0; c < plain.length; c++) {
            plain[c] = isAllowed(c);
        }
        return plain;
    }

    /** Without looking at neighbours; most text is nothing else. */
    private static boolean isPlain(char c) {
        return c < PLAIN.length ? PLAIN[c] : c < Character.MIN_SURROGATE;
    }

    private static boolean isAllowed(int c) {
        boolean white = c == '\n' || c == '\t' || c == '\r' || c == '\f';
        boolean noncharacter = (c & 0xfffe) == 0xfffe || c >= 0xfdd0 && c <= 0xfdef;
        boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return white || !Character.isISOControl(c) && !noncharacter && !half;
    }
}
