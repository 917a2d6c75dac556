package noctuary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every regular expression of the program against long text made to lead it astray: repeated characters that it names
 * itself, in pairs, with and without a wrong end. Values that reach them are at most 4,000 characters long; text of notes,
 * which is longer, is seen by those of {@code NoteBody}, {@code FindPages} and {@code NoteText} only, and tested there.
 */
class PatternsTest {
    private static final Path SOURCES = Path.of("src/main/java");
    private static final Path CLASSES = Path.of("target/classes");
    private static final int LENGTH = 2_000;
    /** The slowest takes some 20 ms on a quiet machine; one that tries everything would take longer than anyone waits. */
    private static final long LIMIT_MS = 2_000;

    private static final Pattern INLINE =
            Pattern.compile("\\.(?:replaceAll|replaceFirst|matches|split)\\(\\s*\"((?:[^\"\\\\\\n]|\\\\.)++)\"");

    @Test
    void noneTakesLongOverTextThatIsMadeForIt() throws Exception {
        Map<String, Pattern> patterns = fields();
        int fields = patterns.size();
        inline().forEach((place, text) -> patterns.put(place, Pattern.compile(text)));
        assertThat(fields).isGreaterThan(35);
        assertThat(patterns.size() - fields).isGreaterThan(30);
        List<String> slow = new ArrayList<>();
        Thread small =
                new Thread(null, () -> patterns.forEach((place, p) -> slow.addAll(slow(place, p))), "small", 1 << 19);
        small.start();
        small.join();
        assertThat(slow).isEmpty();
    }

    private static List<String> slow(String place, Pattern pattern) {
        List<String> slow = new ArrayList<>();
        for (String text : texts(pattern.pattern())) {
            long started = System.nanoTime();
            String end = "";
            try {
                pattern.matcher(text).matches();
                pattern.matcher(text).replaceAll("");
            } catch (StackOverflowError e) {
                end = " takes the stack";
            }
            long ms = (System.nanoTime() - started) / 1_000_000;
            if (ms > LIMIT_MS || !end.isEmpty()) {
                slow.add(place + " takes " + ms + " ms" + end + " over " + text.substring(0, 12) + "…");
            }
        }
        return slow;
    }

    private static List<String> texts(String pattern) {
        TreeSet<String> pieces = new TreeSet<>(List.of(" ", "a", "1", "/", ".", "-"));
        Matcher letters = Pattern.compile("[^\\\\\\[\\]()?*+|^${}\\w]|[a-z]{2,}|(?<=\\\\)[.\\-/]")
                .matcher(pattern);
        while (letters.find() && pieces.size() < 9) {
            pieces.add(letters.group());
        }
        List<String> texts = new ArrayList<>();
        for (String first : pieces) {
            for (String second : pieces) {
                String pair = first.equals(second) ? first : first + second;
                String many = pair.repeat(LENGTH / pair.length());
                texts.add(many);
                texts.add(second + many + "\u0001");
            }
        }
        return texts;
    }

    private static Map<String, Pattern> fields() throws Exception {
        Map<String, Pattern> found = new TreeMap<>();
        try (Stream<Path> classes = Files.walk(CLASSES.resolve("noctuary"))) {
            for (Path file :
                    classes.filter(f -> f.toString().endsWith(".class")).toList()) {
                String name = CLASSES.relativize(file)
                        .toString()
                        .replaceAll("\\.class$", "")
                        .replace('/', '.');
                if (Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1)
                        .contains("java/util/regex/Pattern")) {
                    for (Field field : Class.forName(name).getDeclaredFields()) {
                        if (field.getType() == Pattern.class && Modifier.isStatic(field.getModifiers())) {
                            field.setAccessible(true);
                            found.put(name + "." + field.getName(), (Pattern) field.get(null));
                        }
                    }
                }
            }
        }
        return found;
    }

    /** Those that stand in calls, by place. */
    private static Map<String, String> inline() throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> sources = Files.walk(SOURCES)) {
            for (Path file : sources.filter(f -> f.toString().endsWith(".java")).toList()) {
                Matcher call = INLINE.matcher(Files.readString(file));
                while (call.find()) {
                    found.put(
                            file.getFileName() + " at " + call.start(),
                            call.group(1).translateEscapes());
                }
            }
        }
        return found;
    }
}
