package noctuary.site;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import noctuary.entry.Journal;
import noctuary.fact.Problem;

/**
 * What may be said of the keeper's machine: never a path outside the journal, and names of frames only when the
 * settings say so. Text passes through here before it reaches a page or a download.
 */
final class Discretion {
    private static final Pattern ABSOLUTE = Pattern.compile(
            "(?:\\bfile:/+|(?<![\\w.\\-/:])/|\\b[A-Za-z]:[\\\\/]|\\\\\\\\)(?:[^\\s/\\\\\"'<>|,;:]++[\\\\/])++");
    /** In quotes a path may hold spaces: all before its last piece, whether it begins at the top, at home or above. */
    private static final Pattern QUOTED = Pattern.compile(
            "(?<=\")(?:file:|/|~|[A-Za-z]:[\\\\/]|\\\\|(?:(?!\\.\\.[\\\\/])[^\"/\\\\]*+[\\\\/])*+\\.\\.[\\\\/])"
                    + "[^\"\\n]*[\\\\/](?=[^\"\\n]*\")",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern QUOTED_FRAME =
            Pattern.compile("\"[^\"\\n]*\\.(?:fits?|fts|tiff?|png|jpe?g)(?:\\.(?:fz|gz))?\"", Pattern.CASE_INSENSITIVE);

    /** Begins where a word does, so that a word of thousands of letters is gone over once, not from each of them. */
    private static final Pattern FRAME = Pattern.compile(
            "(?<![^\\s\"'<>|,;()])[^\\s\"'<>|,;()]+\\.(?:fits?|fts|tiff?|png|jpe?g)(?:\\.(?:fz|gz))?\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern FRAME_ENDING =
            Pattern.compile("\\.(?:fits?|fts|tiff?|png|jpe?g)(?:\\.(?:fz|gz))?$", Pattern.CASE_INSENSITIVE);

    private static final Comparator<String> LONGEST_FIRST =
            Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder());

    private final Map<String, String> folders = new TreeMap<>(LONGEST_FIRST);
    private final boolean fileNames;

    Discretion(Journal journal) {
        this.fileNames = journal.settings().publish().fileNames();
        journal.settings().archive().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(e -> folder(journal.root().resolve(e.getValue()), e.getKey() + ":"));
        folder(journal.root(), "");
    }

    private void folder(Path folder, String said) {
        folders.put(folder.toAbsolutePath().normalize() + "/", said);
        folders.put(folder.toAbsolutePath().normalize().toString().replace('/', '\\') + "\\", said);
    }

    /** A sentence without paths, and without names of frames unless they may be told. */
    String text(String text) {
        if (!mayTell(text)) {
            return text;
        }
        String said = text;
        for (Map.Entry<String, String> folder : folders.entrySet()) {
            said = said.replace(folder.getKey(), folder.getValue());
        }
        said = ABSOLUTE.matcher(QUOTED.matcher(said).replaceAll("")).replaceAll("");
        if (fileNames) {
            return said;
        }
        said = QUOTED_FRAME.matcher(said).replaceAll("\"a file\"");
        return FRAME.matcher(said).replaceAll(Matcher.quoteReplacement("a file"));
    }

    /** Whether there is a slash of a path, or a dot before the first letter of an ending; most text has neither. */
    private static boolean mayTell(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ending = c == '.' && i + 1 < text.length() && "fFtTpPjJ".indexOf(text.charAt(i + 1)) >= 0;
            if (c == '/' || c == '\\' || ending) {
                return true;
            }
        }
        return false;
    }

    /** A file as it may be named, such as {@code entries/m27.md}, {@code lights/003.fits} or {@code a file}. */
    String file(String file) {
        return !fileNames && FRAME_ENDING.matcher(file).find() ? "a file" : text(file);
    }

    /** Where a problem is: each half as a file may be named. */
    String where(Problem problem) {
        return problem.place().isEmpty() ? file(problem.file()) : file(problem.file()) + ", " + file(problem.place());
    }

    boolean namesFiles() {
        return fileNames;
    }
}
