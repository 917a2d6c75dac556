package noctuary.fuzz;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import noctuary.site.HtmlValidity;

/** What the checker has against pages, apart from what it has against the words on them. */
final class Markings {
    /** A keeper may write German, and accents in pieces. */
    private static final Pattern WORDS =
            Pattern.compile("(?s).*(Unicode Normalization Form C|appears to be written in).*");

    private Markings() {}

    static List<String> of(Path site) throws IOException {
        return HtmlValidity.problems(site).stream()
                .filter(problem -> !WORDS.matcher(problem).matches())
                .toList();
    }
}
