package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class TrendTest {
    private static final LocalDate START = LocalDate.of(2025, 1, 1);

    private static Trend.Point point(int day, double value, String series, String href) {
        return new Trend.Point(START.plusDays(day), value, value - 0.5, value + 1, series, "Entry of day " + day, href);
    }

    private static Drawn draw(List<Trend.Point> points, List<Trend.Change> changes) {
        return Drawn.of(new Trend("Sharpness", "Star FWHM", "arcsec", List.of("Wren", "Heron"), points, changes)
                .svg("t", Form.WIDE));
    }

    @Test
    void putsValuesWhereTheScaleSays() {
        Drawn drawn = draw(List.of(point(0, 2, "Wren", null), point(100, 4, "Wren", null)), List.of());
        double zero = levelOf(drawn, "0");
        double four = levelOf(drawn, "4");
        List<Element> dots = drawn.elements("circle", "solid");
        assertThat(Drawn.number(dots.get(0), "cy")).isCloseTo((zero + four) / 2, offset(0.02));
        assertThat(Drawn.number(dots.get(1), "cy")).isCloseTo(four, offset(0.02));
        Element whisker = drawn.elements("line", "whisker").get(0);
        double perUnit = (zero - four) / 4;
        assertThat(Drawn.number(whisker, "y1")).isCloseTo(zero - 1.5 * perUnit, offset(0.02));
        assertThat(Drawn.number(whisker, "y2")).isCloseTo(zero - 3 * perUnit, offset(0.02));
    }

    @Test
    void putsDatesWhereTheScaleSays() {
        Drawn drawn = draw(
                List.of(point(0, 2, "Wren", null), point(100, 4, "Wren", null)),
                List.of(new Trend.Change(START.plusDays(50), "new spacer")));
        List<Element> dots = drawn.elements("circle", "solid");
        double middle = (Drawn.number(dots.get(0), "cx") + Drawn.number(dots.get(1), "cx")) / 2;
        Element flag = drawn.elements("line", "flagline").get(0);
        assertThat(Drawn.number(flag, "x1")).isCloseTo(middle, offset(0.02));
        assertThat(drawn.tips()).contains("20 Feb 2025: new spacer");
    }

    @Test
    void beginsAtZeroUnlessThatWouldWasteHalfOfIt() {
        Drawn low = draw(List.of(point(0, 2, "Wren", null), point(9, 4, "Wren", null)), List.of());
        assertThat(low.texts()).contains("0").noneMatch(text -> text.startsWith("scale begins"));
        Drawn high = draw(List.of(point(0, 7.6, "Wren", null), point(9, 8, "Wren", null)), List.of());
        assertThat(high.texts()).doesNotContain("0").contains("scale begins at 7.0");
    }

    @Test
    void tellsSeriesApartByShape() {
        Drawn drawn = draw(List.of(point(0, 2, "Wren", null), point(9, 4, "Heron", null)), List.of());
        assertThat(drawn.elements("circle", "s1")).isNotEmpty();
        assertThat(drawn.elements("rect", "s2")).isNotEmpty();
        assertThat(drawn.elements("line", "d2")).isNotEmpty();
        assertThat(drawn.texts()).contains("Wren, median 2.00 of 1", "Heron, median 4.00 of 1");
    }

    /** A rig keeps its look on a page where it is the only one. */
    @Test
    void keepsTheLookOfASeriesThatStandsAlone() {
        Drawn drawn = draw(List.of(point(0, 2, "Heron", null)), List.of());
        assertThat(drawn.elements("circle", "s1")).isEmpty();
        assertThat(drawn.elements("rect", "s2")).isNotEmpty();
    }

    @Test
    void leadsToTheEntry() {
        Drawn drawn = draw(
                List.of(point(0, 2, "Wren", "entries/a/index.html"), point(9, 3, "Wren", "javascript:alert(1)")),
                List.of());
        assertThat(drawn.elements("a").stream().map(a -> a.getAttribute("href")))
                .containsExactly("entries/a/index.html");
        assertThat(drawn.tips()).contains("Entry of day 0, 1 Jan 2025, Wren: 2.00 arcsec (1.50 to 3.00)");
    }

    @Test
    void saysTheGistInWords() {
        Drawn drawn = draw(
                List.of(point(0, 2, "Wren", null), point(9, 3, "Wren", null), point(20, Double.NaN, "Wren", null)),
                List.of(new Trend.Change(START.plusDays(5), "new spacer")));
        assertThat(drawn.description())
                .isEqualTo("Star FWHM by date. Wren: median 2.50 arcsec of 2, from 1 Jan 2025 to 10 Jan 2025."
                        + " Change on 6 Jan 2025: new spacer.");
    }

    private static double levelOf(Drawn drawn, String label) {
        return drawn.elements("text", "tick").stream()
                        .filter(text -> text.getTextContent().equals(label))
                        .mapToDouble(text -> Drawn.number(text, "y"))
                        .findFirst()
                        .orElseThrow()
                - 4.5;
    }
}
