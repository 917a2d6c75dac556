package noctuary.entry;

/** A cheap look at a note before it is parsed: text nested absurdly deep takes a parser's stack or its time. */
final class Nesting {
    private static final int DEEPEST_BLOCKS = 60;
    private static final int DEEPEST_BRACKETS = 100;

    private Nesting() {}

    static boolean isTooDeep(String body) {
        return body.lines().anyMatch(line -> blocks(line) > DEEPEST_BLOCKS) || brackets(body) > DEEPEST_BRACKETS;
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
            } else if (c == '\n' && i > 0 && body.charAt(i - 1) == '\n') {
                open = 0;
            }
        }
        return most;
    }
}
