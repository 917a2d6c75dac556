package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Colours of the three themes against WCAG 2.2, success criteria 1.4.3 (text, 4.5 to 1) and 1.4.11 (other, 3 to 1). */
class ThemeTest {
    private static final List<String> TEXT = List.of("ink", "ink-soft", "good", "warn", "bad");
    private static final List<String> SIGNS = List.of("edge", "mark-1", "mark-2", "mark-3", "mark-4", "mark-5");

    @ParameterizedTest
    @ValueSource(strings = {":root {", "[data-theme=\"light\"]", "[data-theme=\"red\"]", ":root, :root[data-theme]"})
    void everyColourStandsOutOnBothGrounds(String theme) throws IOException {
        Map<String, String> colours = colours(theme);
        for (String ground : List.of("ground", "panel")) {
            TEXT.forEach(name -> assertThat(contrast(colours.get(name), colours.get(ground)))
                    .as(name + " on " + ground)
                    .isGreaterThanOrEqualTo(4.5));
            SIGNS.forEach(name -> assertThat(contrast(colours.get(name), colours.get(ground)))
                    .as(name + " on " + ground)
                    .isGreaterThanOrEqualTo(3));
        }
    }

    @Test
    void redHasNeitherGreenNorBlue() throws IOException {
        assertThat(colours("[data-theme=\"red\"]").values())
                .hasSizeGreaterThan(10)
                .allSatisfy(colour -> assertThat(colour).matches("#[0-9a-f]{2}0000"));
    }

    /** Black on white is 21 to 1 by the definition; #777777 on white is known to miss 4.5 by a hair (from memory). */
    @Test
    void theRatioIsTheOneOfTheDefinition() {
        assertThat(contrast("#000000", "#ffffff")).isCloseTo(21, within(1e-9));
        assertThat(contrast("#777777", "#ffffff")).isCloseTo(4.48, within(0.005));
    }

    private static Map<String, String> colours(String theme) throws IOException {
        String css = new String(new Assets(null).read("assets/site.css"), StandardCharsets.UTF_8);
        int from = css.indexOf(theme);
        String block = css.substring(from, css.indexOf('}', from));
        Map<String, String> colours = new TreeMap<>();
        Matcher property = Pattern.compile("--([a-z0-9-]+): (#[0-9a-f]{3,6});").matcher(block);
        while (property.find()) {
            colours.put(property.group(1), property.group(2));
        }
        return colours;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** WCAG 2.2, definition of relative luminance. */
    private static double luminance(String colour) {
        String hex = colour.length() == 4 ? colour.replaceAll("([0-9a-f])", "$1$1") : colour;
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double v = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
