package noctuary.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A note taken apart: its keys and its body.
 *
 * @param bodyLine line of the file on which the body begins, from 1
 */
record Note(Node.Mapping keys, String body, int bodyLine) {
    private static final Pattern FENCE = Pattern.compile("---\\h*");
    private static final Pattern CLOSE = Pattern.compile("(?:---|\\.\\.\\.)\\h*");

    static Note of(NoteText file, Margin margin) {
        String[] lines = file.text().split("\n", -1);
        int open = firstFilled(lines);
        if (open == lines.length) {
            if (!file.cut()) {
                margin.fault(0, "", "this file is empty", "begin with a line of ---, then keys, then --- again");
            }
            return broken("", 1);
        }
        if (!FENCE.matcher(lines[open]).matches()) {
            margin.fault(
                    open + 1,
                    "",
                    "the keys at the top are missing",
                    "begin with a line of ---, then keys such as \"rig: heron\", then --- again");
            return broken(shown(file, lines, open), open + 1);
        }
        return closeOf(lines, open)
                .map(close -> new Note(
                        YamlReader.read(join(lines, open + 1, close), open + 1, margin),
                        shown(file, lines, close + 1),
                        close + 2))
                .orElseGet(() -> {
                    margin.fault(
                            open + 1, "", "the keys begin here and never end", "put a line of --- below the last key");
                    return broken("", lines.length);
                });
    }

    private static Note broken(String body, int line) {
        return new Note(new Node.Mapping(List.of(), 1, false), body, line);
    }

    private static String shown(NoteText file, String[] lines, int from) {
        return file.cut() ? "" : join(lines, from, lines.length);
    }

    private static int firstFilled(String[] lines) {
        int i = 0;
        while (i < lines.length && lines[i].isBlank()) {
            i++;
        }
        return i;
    }

    private static Optional<Integer> closeOf(String[] lines, int open) {
        for (int i = open + 1; i < lines.length; i++) {
            if (CLOSE.matcher(lines[i]).matches()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static String join(String[] lines, int from, int to) {
        return String.join("\n", Arrays.asList(lines).subList(from, to)) + "\n";
    }
}
