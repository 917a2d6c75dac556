package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class StarChartsTest {
    private static final StarShape LEANING = new StarShape(1000, 500, 4, 0.2, 30);

    /** 30 degrees from +x towards +y rises to the right where y grows upward. */
    @Test
    void aWhiskerLeansAsTheStarDoes() {
        Drawn drawn = Drawn.of(new StarWhiskers("Stars", 4000, 3000, List.of(LEANING)).svg("w", Form.WIDE));
        Element whisker = drawn.elements("line", "long").get(0);
        double dx = Drawn.number(whisker, "x2") - Drawn.number(whisker, "x1");
        double dy = Drawn.number(whisker, "y2") - Drawn.number(whisker, "y1");
        assertThat(Math.toDegrees(Math.atan2(-dy, dx))).isCloseTo(30, offset(0.1));
    }

    @Test
    void aWhiskerIsAsLongAsTheEllipticityAgainstItsKey() {
        Drawn drawn = Drawn.of(
                new StarWhiskers("Stars", 4000, 3000, List.of(new StarShape(9, 9, 8, 0.1, 0))).svg("w", Form.NARROW));
        List<Element> lines = drawn.elements("line", "long");
        assertThat(length(lines.get(0)) / length(lines.get(1))).isCloseTo(0.1 / 0.2, offset(0.01));
        List<Element> circles = drawn.elements("circle", "size");
        assertThat(Drawn.number(circles.get(0), "r") / Drawn.number(circles.get(1), "r"))
                .isCloseTo(8.0 / 4.0, offset(0.01));
        assertThat(drawn.texts()).contains("FWHM 4 px, ellipticity 0.2");
    }

    @Test
    void theFirstRowOfTheFrameIsAtTheBottom() {
        Drawn drawn = Drawn.of(new StarWhiskers("Stars", 4000, 3000, List.of(LEANING)).svg("w", Form.WIDE));
        Element frame = drawn.elements("rect", "frame").get(0);
        double share = (Drawn.number(drawn.elements("circle", "size").get(0), "cy") - Drawn.number(frame, "y"))
                / Drawn.number(frame, "height");
        assertThat(share).isCloseTo(1 - 500.5 / 3000, offset(0.001));
    }

    @Test
    void onlyAsManyStarsAreDrawnAsStayLegible() {
        Drawn drawn =
                Drawn.of(new StarWhiskers("Stars", 4000, 3000, Collections.nCopies(5000, LEANING)).svg("w", Form.WIDE));
        assertThat(drawn.elements("line", "long")).hasSize(301);
        assertThat(drawn.texts()).contains("4000 × 3000 px, 300 brightest of 5000 stars");
        assertThat(drawn.description())
                .isEqualTo("5000 stars. Median FWHM 4.00 px, median ellipticity 0.20; most long axes lie near 30°."
                        + " First row of the frame at the bottom.");
    }

    @Test
    void anOverlayHasThePicturesProportionsAndPlaces() {
        Drawn sky = Drawn.of(new StarOverlay("Stars", 4000, 3000, true, List.of(LEANING)).both("o"));
        assertThat(sky.root().getAttribute("viewBox")).isEqualTo("0 0 1000 750");
        assertThat(place(sky)).containsExactly(250.13, 624.88);
        Drawn picture = Drawn.of(new StarOverlay("Stars", 4000, 3000, false, List.of(LEANING)).both("o"));
        assertThat(place(picture)).containsExactly(250.13, 125.13);
        Element whisker = picture.elements("line", "long").get(0);
        assertThat(Drawn.number(whisker, "y2")).isGreaterThan(Drawn.number(whisker, "y1"));
    }

    @Test
    void anOverlayNamesEachStarAndStopsAtAHundredAndFifty() {
        Drawn drawn = Drawn.of(new StarOverlay("Stars", 4000, 3000, true, Collections.nCopies(400, LEANING)).both("o"));
        assertThat(drawn.tips()).hasSize(150);
        assertThat(drawn.tips().get(0)).isEqualTo("x 1000, y 500: FWHM 4.00 px, ellipticity 0.20 at 30°");
    }

    @Test
    void aStarWithoutAShapeIsNotDrawn() {
        StarShape unknown = new StarShape(1, 1, Double.NaN, Double.NaN, Double.NaN);
        assertThat(Drawn.of(new StarOverlay("Stars", 40, 30, true, List.of(unknown)).both("o"))
                        .description())
                .isEqualTo("No measured stars.");
    }

    @Test
    void zonesShowTheirDifferenceFromTheCentre() {
        List<ZoneMap.Zone> zones = List.of(
                new ZoneMap.Zone(0, 0, 40, 3.3, 0.1, 45),
                new ZoneMap.Zone(1, 1, 50, 3.0, 0.02, 0),
                new ZoneMap.Zone(2, 2, 2, Double.NaN, Double.NaN, Double.NaN));
        Drawn drawn = Drawn.of(new ZoneMap("Zones", 4000, 3000, "px", zones).both("z"));
        assertThat(drawn.texts()).contains("3.30", "+10 %", "3.00", "50 stars", "too few: 2");
        assertThat(drawn.description())
                .contains("bottom left FWHM 3.30 px, ellipticity 0.10 from 40 stars")
                .contains("top right too few stars (2)");
        List<Element> big = drawn.elements("text", "big");
        assertThat(Drawn.number(big.get(1), "y")).as("row 0 below row 1").isGreaterThan(Drawn.number(big.get(0), "y"));
    }

    private static List<Double> place(Drawn drawn) {
        Element circle = drawn.elements("circle", "size").get(0);
        return List.of(Drawn.number(circle, "cx"), Drawn.number(circle, "cy"));
    }

    private static double length(Element line) {
        return Math.hypot(
                Drawn.number(line, "x2") - Drawn.number(line, "x1"),
                Drawn.number(line, "y2") - Drawn.number(line, "y1"));
    }
}
