package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class TimeChartsTest {
    private static final YearMonth JUNE = YearMonth.of(2025, 6);

    @Test
    void monthsStackToTheirSum() {
        Drawn drawn = Drawn.of(new MonthBars(
                        "Exposure",
                        "Exposure",
                        List.of("Wren", "Heron"),
                        List.of(
                                new MonthBars.Hours(JUNE, "Heron", 2),
                                new MonthBars.Hours(JUNE, "Wren", 3),
                                new MonthBars.Hours(JUNE, "Wren", 1),
                                new MonthBars.Hours(JUNE.plusMonths(2), "Wren", 8)))
                .svg("m", Form.WIDE));
        List<Element> bars = drawn.elements("rect", "bar").subList(2, 5);
        double wren = Drawn.number(bars.get(0), "height");
        double heron = Drawn.number(bars.get(1), "height");
        assertThat(wren / heron).isCloseTo(2, offset(0.001));
        assertThat(Drawn.number(bars.get(1), "y") + heron).isCloseTo(Drawn.number(bars.get(0), "y"), offset(0.01));
        assertThat(Drawn.number(bars.get(2), "height")).isCloseTo(2 * wren, offset(0.01));
        assertThat(drawn.texts()).contains("6.0", "8.0", "Wren, 12.0 h", "Heron, 2.0 h", "Jul");
        assertThat(drawn.description()).isEqualTo("Hours by month: Jun 2025 6.0 h, Aug 2025 8.0 h. In all 14.0 h.");
    }

    @Test
    void aNightIsNotJoinedAcrossAGap() {
        LocalDateTime start = LocalDateTime.of(2025, 6, 14, 23, 0);
        List<NightCourse.Sample> samples = IntStream.range(0, 20)
                .mapToObj(i -> new NightCourse.Sample(start.plusMinutes(i < 10 ? 5L * i : 5L * i + 60), 2 + 0.1 * i))
                .toList();
        Drawn drawn = Drawn.of(
                new NightCourse("Course", "UTC", List.of(new NightCourse.Panel("FWHM", "px", samples)), List.of())
                        .svg("n", Form.WIDE));
        String path = drawn.elements("path", "course").get(0).getAttribute("d");
        assertThat(path.chars().filter(c -> c == 'M').count()).isEqualTo(2);
        assertThat(drawn.elements("rect", "gap")).hasSize(1);
        assertThat(drawn.tips()).contains("1.1 h gap");
        assertThat(path.chars().filter(c -> c == 'L').count()).isEqualTo(18);
        assertThat(drawn.description())
                .isEqualTo("FWHM in px: 20 frames, first 2.00 at 23:00, lowest 2.00 at 23:00, highest 3.90 at 01:35,"
                        + " last 3.90 at 01:35. Times in UTC.");
    }

    @Test
    void panelsShareOneTimeAxis() {
        Drawn drawn = Drawn.of(Samples.course().svg("n", Form.NARROW));
        List<List<String>> across = drawn.elements("path", "course").stream()
                .map(path -> Pattern.compile("[ML]([0-9.]+) ")
                        .matcher(path.getAttribute("d"))
                        .results()
                        .map(place -> place.group(1))
                        .toList())
                .toList();
        assertThat(across).hasSize(4);
        assertThat(across.get(0)).hasSize(58).isEqualTo(across.get(3));
    }

    @Test
    void exposureGrowsByEachAttempt() {
        LocalDate day = LocalDate.of(2025, 6, 14);
        Drawn drawn = Drawn.of(new ExposureGrowth(
                        "Growth",
                        10,
                        List.of(),
                        List.of(
                                new ExposureGrowth.Attempt(day.plusDays(30), 3, "Wren", "second", null),
                                new ExposureGrowth.Attempt(day, 2, "Wren", "first", null)))
                .svg("g", Form.WIDE));
        List<Element> dots = drawn.elements("circle", "solid");
        double goal = Drawn.number(drawn.elements("line", "goal").get(0), "y1");
        double zero = Drawn.number(drawn.elements("line", "axis").get(0), "y1");
        assertThat(Drawn.number(dots.get(0), "cy")).isCloseTo(zero - 0.2 * (zero - goal), offset(0.02));
        assertThat(Drawn.number(dots.get(1), "cy")).isCloseTo(zero - 0.5 * (zero - goal), offset(0.02));
        assertThat(drawn.texts()).contains("goal 10.0 h", "5.0 h of 10.0 h, 50 %", "first +2.0 h", "second +3.0 h");
    }

    @Test
    void attemptsAreLabelledWithoutTouching() {
        for (Form form : Form.values()) {
            Drawn drawn = Drawn.of(Samples.growth().svg("g", form));
            List<Element> labels = drawn.elements("text", "halo");
            assertThat(labels)
                    .as("the goal and six attempts, one less where narrow")
                    .hasSize((int) form.pick(7, 6));
            Spots spots = new Spots();
            for (Element label : labels) {
                Anchor anchor = label.getAttribute("text-anchor").equals("end") ? Anchor.END : Anchor.START;
                double width = Words.width(label.getTextContent(), form.fontSize());
                Spots.Area area = Spots.Area.ofText(anchor, Drawn.number(label, "x"), Drawn.number(label, "y"), width);
                assertThat(spots.isFree(area)).as(label.getTextContent()).isTrue();
                spots.take(area);
            }
        }
    }

    @Test
    void theCalendarTellsUsedLostAndUnknownApart() {
        Drawn drawn = Drawn.of(new NightCalendar(
                        "Nights",
                        2024,
                        List.of(
                                new NightCalendar.Night(LocalDate.of(2024, 2, 29), 6, 1.5, "M 81", "entries/m81.html"),
                                new NightCalendar.Night(LocalDate.of(2024, 3, 1), Double.NaN, 0, "M 101", null),
                                new NightCalendar.Night(LocalDate.of(2025, 3, 1), 3, 0, "next year", null)),
                        List.of())
                .svg("c", Form.WIDE));
        assertThat(drawn.tips())
                .containsExactly("29 Feb 2024: M 81, 6.0 h used, 1.5 h lost", "1 Mar 2024: M 101, hours not known");
        Element used = drawn.elements("rect", "full").get(0);
        Element lost = drawn.elements("rect", "lost").get(0);
        assertThat(Drawn.number(used, "height") / Drawn.number(lost, "height")).isCloseTo(4, offset(0.01));
        assertThat(Drawn.number(lost, "y") + Drawn.number(lost, "height"))
                .isCloseTo(Drawn.number(used, "y"), offset(0.011));
        assertThat(drawn.elements("circle", "hollow"))
                .as("the night and the key")
                .hasSize(2);
        assertThat(drawn.description())
                .isEqualTo("2 nights recorded in 2024: 6.0 h used, 1.5 h noted as lost, 1 with hours not known."
                        + " Days without a mark have nothing recorded. Feb 1 night, 6.0 h. Mar 1 night, 0 min.");
    }

    @Test
    void aSparklineLeavesGaps() {
        Drawn drawn = Drawn.of(new Sparkline("FWHM", "px", List.of(3.0, 2.0, Double.NaN, 2.5, 4.0)).both("s"));
        assertThat(drawn.elements("path", "course").get(0).getAttribute("d")).isEqualTo("M6 15L43 24M117 19.5L154 6");
        assertThat(drawn.description()).isEqualTo("4 values, median 2.75 px, last 4.00 px.");
    }
}
