package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** What holds for every drawing, whatever it shows. */
class EveryChartTest {
    static Stream<Arguments> all() {
        Map<String, Chart> charts = new LinkedHashMap<>();
        Gallery.charts().forEach((name, chart) -> charts.put("sample " + name, chart));
        add(charts, "none of ", Oddities.of("x", 0, 1));
        add(charts, "one of ", Oddities.of("Heron", 1, 2.5));
        add(charts, "two equal of ", Oddities.of("Heron", 2, 2.5));
        add(charts, "zeros of ", Oddities.of("Heron", 2, 0));
        add(charts, "negative ", Oddities.of("Heron", 2, -4));
        add(charts, "unknown ", Oddities.of("Heron", 2, Double.NaN));
        add(charts, "endless ", Oddities.of("Heron", 2, Double.POSITIVE_INFINITY));
        add(charts, "huge ", Oddities.of("Heron", 2, 1e9));
        add(charts, "tiny ", Oddities.of("Heron", 2, 1e-9));
        add(charts, "hostile ", Oddities.of(Oddities.HOSTILE, 2, 2.5));
        add(charts, "long-winded ", Oddities.of("a very long name ".repeat(20), 2, 2.5));
        return charts.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    private static void add(Map<String, Chart> to, String prefix, Map<String, Chart> charts) {
        charts.forEach((name, chart) -> to.put(prefix + name, chart));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void isWellFormedWithATextAlternative(String name, Chart chart) {
        Drawn drawn = Drawn.of("<div>" + chart.both("c1") + "</div>");
        for (Element svg : drawn.elements("svg")) {
            boolean links = svg.getElementsByTagName("a").getLength() > 0;
            assertThat(svg.getAttribute("role")).isIn(links ? List.of("group") : List.of("img", "group"));
            assertThat(svg.getAttribute("viewBox")).matches("0 0 [0-9.]+ [0-9.]+");
            String[] labels = svg.getAttribute("aria-labelledby").split(" ");
            assertThat(labels).hasSize(2);
            assertThat(textOf(drawn, "title", labels[0])).isNotBlank();
            assertThat(textOf(drawn, "desc", labels[1])).isNotBlank();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void repeatsNoIdAndPointsOnlyAtItsOwn(String name, Chart chart) {
        Drawn drawn = Drawn.of("<div>" + chart.both("c1") + chart.both("c2") + "</div>");
        Set<String> ids = new HashSet<>();
        for (Element element : drawn.elements("*")) {
            String id = element.getAttribute("id");
            assertThat(id.isEmpty() || ids.add(id)).as("id %s once", id).isTrue();
        }
        for (Element element : drawn.elements("*")) {
            String fill = element.getAttribute("fill");
            if (fill.startsWith("url(#")) {
                assertThat(ids).contains(fill.substring(5, fill.length() - 1));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void carriesNoStyleNoScriptAndNoForeignAddress(String name, Chart chart) {
        String text = chart.both("c1");
        assertThat(text).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("null");
        for (Element element : Drawn.of("<div>" + text + "</div>").elements("*")) {
            assertThat(element.getTagName()).isNotIn("script", "style", "foreignObject", "image", "use", "b");
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                Node attribute = element.getAttributes().item(i);
                assertThat(attribute.getNodeName()).doesNotStartWith("on").isNotEqualTo("style");
                assertThat(attribute.getNodeName().equals("href") && !Markup.staysInside(attribute.getNodeValue()))
                        .isFalse();
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void staysTheSameInEveryLocale(String name, Chart chart) {
        String here = chart.both("c1");
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(
                    new Locale.Builder().setLanguageTag("ar-EG-u-nu-arab").build());
            assertThat(chart.both("c1")).isEqualTo(here);
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void keepsWordsWithinItsEdges(String name, Chart chart) {
        for (Form form : Form.values()) {
            Drawn drawn = Drawn.of(chart.svg("c1", form));
            String[] box = drawn.root().getAttribute("viewBox").split(" ");
            double width = Double.parseDouble(box[2]);
            double height = Double.parseDouble(box[3]);
            double fontSize = Drawn.number(drawn.root(), "font-size");
            for (Element text : drawn.elements("text")) {
                String words = text.getTextContent();
                double from = side(text).from(Drawn.number(text, "x"), Words.width(words, fontSize));
                assertThat(from).as(words).isGreaterThanOrEqualTo(-1);
                assertThat(from + Words.width(words, fontSize)).as(words).isLessThanOrEqualTo(width + 1);
                assertThat(Drawn.number(text, "y")).as(words).isBetween(10.0, height);
            }
        }
    }

    private static Anchor side(Element text) {
        return Stream.of(Anchor.values())
                .filter(anchor -> anchor.attribute().equals(text.getAttribute("text-anchor")))
                .findFirst()
                .orElse(Anchor.START);
    }

    private static String textOf(Drawn drawn, String element, String id) {
        List<String> found = drawn.elements(element).stream()
                .filter(e -> e.getAttribute("id").equals(id))
                .map(Element::getTextContent)
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }
}
