package noctuary.site;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.site.page.Link;

/**
 * The words that the box of the find page looks through: a script, because a page opened from a disk may not fetch, with a
 * row on a line of its own of name, way, kind, night, words of the facts and words of the note.
 */
final class FindWords {
    static final String PATH = "find/words.js";

    private static final String BEGIN = "var noctuaryWords = [\n";
    private static final String END = "\n];\n";
    private static final String NEXT = ",\n";

    /** Of each note; with 1,500 notes of that length the script is 3 MB. */
    private static final int MOST_LETTERS = 1_600;

    private static final int NOTE = 5;

    private final JsonMapper mapper = JsonMapper.builder().build();
    private final List<String> rows;

    FindWords() {
        this(List.of());
    }

    private FindWords(List<String> rows) {
        this.rows = new ArrayList<>(rows);
    }

    /** As they were written; empty when that is no script of ours. */
    static Optional<FindWords> read(byte[] script) {
        String text = new String(script, StandardCharsets.UTF_8);
        return text.startsWith(BEGIN) && text.endsWith(END)
                ? Optional.of(new FindWords(List.of(text.substring(BEGIN.length(), text.length() - END.length())
                        .split(NEXT))))
                : Optional.empty();
    }

    /** @param html of the note; empty where there is none */
    void add(Link link, String kind, String detail, String facts, String html) {
        rows.add(row(List.of(link.text(), link.href(), kind, detail, facts, cut(html))));
    }

    /** Gives a row other words of the note; false when that row leads elsewhere. */
    boolean reword(int at, String href, String html) {
        List<String> row = at < rows.size() ? cells(rows.get(at)) : List.of();
        if (row.size() != NOTE + 1 || !row.get(1).equals(href)) {
            return false;
        }
        List<String> reworded = new ArrayList<>(row.subList(0, NOTE));
        reworded.add(cut(html));
        rows.set(at, row(reworded));
        return true;
    }

    byte[] script() {
        return (BEGIN + String.join(NEXT, rows) + END).getBytes(StandardCharsets.UTF_8);
    }

    private String row(List<String> cells) {
        try {
            return mapper.writeValueAsString(cells);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("texts are always written", e);
        }
    }

    private List<String> cells(String row) {
        try {
            return List.of(mapper.readValue(row, String[].class));
        } catch (JsonProcessingException e) {
            return List.of();
        }
    }

    private static String cut(String html) {
        String words = text(html);
        return words.substring(0, Math.min(words.length(), MOST_LETTERS));
    }

    private static String text(String html) {
        return html.replaceAll("<[^>]*>", " ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
