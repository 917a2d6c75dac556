package noctuary.entry;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines that belong to one key at the left margin, so that a mistake in them costs this key only.
 *
 * @param first index of the key's line
 * @param end index behind the last line
 */
record YamlBlock(List<String> lines, int first, int end) {
    private static final Pattern KEY = Pattern.compile("^[\\s-]*([\\p{L}][\\p{L}\\p{N} _-]{0,40}):(?:\\s.*|$)");

    /** @param line from 1 */
    static YamlBlock around(String text, int line) {
        List<String> lines = List.of(text.split("\n", -1));
        int first = Math.min(line, lines.size()) - 1;
        while (first > 0 && !begins(lines.get(first))) {
            first--;
        }
        int end = first + 1;
        while (end < lines.size() && !begins(lines.get(end))) {
            end++;
        }
        return new YamlBlock(lines, first, end);
    }

    private static boolean begins(String line) {
        return !line.isBlank() && " \t#-]}".indexOf(line.charAt(0)) < 0;
    }

    /** The key on a line, else the key of the block, else empty. */
    String key(int line) {
        Matcher own = KEY.matcher(lines.get(Math.min(line, lines.size()) - 1));
        if (own.matches()) {
            return own.group(1);
        }
        Matcher outer = KEY.matcher(lines.get(first));
        return outer.matches() ? outer.group(1) : "";
    }

    /** The whole text with this block's lines left empty. */
    String without() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < lines.size(); i++) {
            text.append(first <= i && i < end ? "" : lines.get(i)).append('\n');
        }
        return text.toString();
    }
}
