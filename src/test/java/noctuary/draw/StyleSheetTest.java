package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class StyleSheetTest {
    /** Classes that name what a thing is and leave its looks to the element. */
    private static final Set<String> NAMES_ONLY = Set.of(
            "months",
            "trend",
            "strength",
            "whiskers",
            "course",
            "growth",
            "calendar",
            "train",
            "intervals",
            "share",
            "flag",
            "label",
            "d1");

    private final String css = read();

    private static String read() {
        try {
            return Files.readString(Path.of("site-templates/assets/charts.css"), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError("tests run in the project's root", e);
        }
    }

    /** A theme must be able to turn every colour, to red alone if need be. */
    @Test
    void takesEveryColourFromTheTheme() {
        String colours = Pattern.compile("(?:fill|stroke|color|background|--c): ([^;}]+)")
                .matcher(css)
                .results()
                .map(m -> m.group(1))
                .filter(value -> !value.matches("var\\(--[a-z0-9-]+\\)|none|transparent|stroke"))
                .collect(Collectors.joining("; "));
        assertThat(colours).isEmpty();
        assertThat(css)
                .doesNotContainPattern("#[0-9a-fA-F]{3}")
                .doesNotContain("rgb")
                .doesNotContain("url(");
    }

    @Test
    void knowsEveryClassThatTheChartsUse() {
        Set<String> known = Pattern.compile("\\.([a-z][a-z0-9-]*)")
                .matcher(css)
                .results()
                .map((MatchResult m) -> m.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> used = new TreeSet<>();
        for (Chart chart : Gallery.charts().values()) {
            for (Element element :
                    Drawn.of("<div>" + chart.both("c") + "</div>").elements("*")) {
                used.addAll(Set.of(element.getAttribute("class").split(" ")));
            }
        }
        used.remove("");
        used.removeAll(known);
        used.removeAll(NAMES_ONLY);
        assertThat(used).isEmpty();
    }
}
