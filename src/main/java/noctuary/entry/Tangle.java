package noctuary.entry;

/**
 * A cheap look at a note before it is parsed: text nested absurdly deep takes the parser's stack, and a paragraph of
 * thousands of brackets its time, which grows as the paragraph's length times the number of its marks.
 */
final class Tangle {
    private static final int DEEPEST_BLOCKS = 60;
    private static final int DEEPEST_BRACKETS = 100;
    private static final int MOST_FOOTNOTES = 500;
    private static final long MOST_WORK = 500_000_000L;
    private static final String MARKS = "[]()*_`<>!&\\~|";

    private Tangle() {}

    static boolean isTangled(String body) {
        return body.lines().anyMatch(line -> blocks(line) > DEEPEST_BLOCKS)
                || brackets(body) > DEEPEST_BRACKETS
                || body.split("\\[\\^", MOST_FOOTNOTES + 2).length > MOST_FOOTNOTES + 1
                || work(body) > MOST_WORK;
    }

    /** Quote and list markers at the beginning of a line, and two columns of indent for each level above. */
    private static int blocks(String line) {
        int markers = 0;
        int spaces = 0;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == ' ' || c == '\t') {
                spaces += c == '\t' ? 4 : 1;
            } else if (">-*+.)".indexOf(c) >= 0) {
                markers++;
            } else if (!Character.isDigit(c)) {
                break;
            }
        }
        return markers + spaces / 2;
    }

    /** Opening brackets that stand open at once within one paragraph. */
    private static int brackets(String body) {
        int open = 0;
        int most = 0;
        for (int i = 0; i < body.length(); i++) {
            char c = body.charAt(i);
            if (c == '[' || c == '(') {
                most = Math.max(most, ++open);
            } else if (c == ']' || c == ')') {
                open = Math.max(0, open - 1);
            } else if (endsParagraph(body, i)) {
                open = 0;
            }
        }
        return most;
    }

    /** Characters times marks, summed over paragraphs. */
    private static long work(String body) {
        long work = 0;
        long marks = 0;
        int start = 0;
        for (int i = 0; i < body.length(); i++) {
            marks += MARKS.indexOf(body.charAt(i)) >= 0 ? 1 : 0;
            if (endsParagraph(body, i) || i == body.length() - 1) {
                work += marks * (i - start);
                marks = 0;
                start = i;
            }
        }
        return work;
    }

    private static boolean endsParagraph(String body, int i) {
        return body.charAt(i) == '\n' && i > 0 && body.charAt(i - 1) == '\n';
    }
}
