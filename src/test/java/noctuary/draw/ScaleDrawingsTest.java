package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Drawings to scale and shares: the train, the framing, the intervals, the filters. */
class ScaleDrawingsTest {
    private static final double NAN = Double.NaN;

    @Test
    void partsAreDrawnToOneScale() {
        Drawn drawn = Drawn.of(Samples.train().svg("t", Form.WIDE));
        List<Element> parts = drawn.elements("rect", "part");
        double perMm = Drawn.number(parts.get(0), "width") / 37.5;
        assertThat(Drawn.number(parts.get(1), "width")).isCloseTo(17.5 * perMm, offset(0.05));
        assertThat(Drawn.number(drawn.elements("rect", "pane").get(0), "width")).isCloseTo(2 * perMm, offset(0.05));
        assertThat(Drawn.number(drawn.elements("rect", "difference").get(0), "width"))
                .isCloseTo(0.68 * perMm, offset(0.05));
        Element sensor = drawn.elements("line", "sensor").get(0);
        assertThat(Drawn.number(sensor, "y2") - Drawn.number(sensor, "y1")).isCloseTo(21.1 * perMm, offset(0.05));
        assertThat(Drawn.number(sensor, "x1"))
                .isCloseTo(Drawn.number(parts.get(1), "x") + Drawn.number(parts.get(1), "width"), offset(0.02));
    }

    @Test
    void theDifferenceIsCalledOutAndJudgedOnlyAgainstATolerance() {
        assertThat(Samples.train().difference()).isEqualTo("0.68 mm too short");
        assertThat(train(55.4, 55.2, 0.3).difference()).isEqualTo("0.20 mm too long, within ± 0.30 mm");
        assertThat(train(55.2, 55.2, NAN).difference()).isEqualTo("as required");
        assertThat(train(55.2, NAN, NAN).difference()).isEqualTo("required distance not known");
        assertThat(train(NAN, 55.2, NAN).difference()).isEqualTo("a length is missing");
        Drawn unjudged = Drawn.of(train(55, 56, NAN).svg("t", Form.WIDE));
        assertThat(unjudged.elements("text", "bad")).isEmpty();
        assertThat(unjudged.elements("text", "good")).isEmpty();
    }

    @Test
    void aJointThatWillNotMateIsMarked() {
        Drawn drawn = Drawn.of(Samples.brokenTrain().svg("t", Form.NARROW));
        assertThat(drawn.elements("line", "misfit")).hasSize(1);
        assertThat(drawn.texts()).contains("M48×0.75 male, M42×0.75 female will not mate", "a length is missing");
        assertThat(drawn.description())
                .contains("Will not mate: M48×0.75 male, M42×0.75 female.")
                .contains("rotator;");
        assertThat(Drawn.of(Samples.train().svg("t", Form.NARROW)).elements("line", "misfit"))
                .isEmpty();
    }

    @Test
    void aJointBehindTheLastPartIsRefused() {
        assertThatThrownBy(() -> new TrainDrawing(
                        "T",
                        List.of(new TrainDrawing.Part("camera", 17.5, 0, 42)),
                        List.of(new TrainDrawing.Joint(0, "M42", TrainDrawing.Mate.FITS)),
                        55,
                        17.5,
                        NAN,
                        NAN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void fieldsAndTargetShareOneScale() {
        Drawn drawn = Drawn.of(Samples.framing().both("f"));
        double perArcmin = Drawn.number(drawn.elements("ellipse", "target").get(0), "rx") / 95;
        List<Element> fields = drawn.elements("rect", "outline");
        assertThat(Drawn.number(fields.get(0), "width")).isCloseTo(151 * perArcmin, offset(0.1));
        assertThat(Drawn.number(fields.get(1), "height")).isCloseTo(58 * perArcmin, offset(0.1));
    }

    @Test
    void intervalsStandAboutZero() {
        Drawn drawn = Drawn.of(Samples.intervals().svg("i", Form.WIDE));
        double zero = Drawn.number(drawn.elements("line", "zero").get(0), "x1");
        Element interval = drawn.elements("line", "better").get(0);
        double perUnit = (zero - Drawn.number(interval, "x1")) / 26;
        assertThat(zero - Drawn.number(interval, "x2")).isCloseTo(8.1 * perUnit, offset(0.02));
        assertThat(zero - Drawn.number(drawn.elements("circle", "better").get(0), "cx"))
                .isCloseTo(17.4 * perUnit, offset(0.02));
        assertThat(drawn.elements("rect", "worse"))
                .as("worse has another shape")
                .hasSize(1);
        assertThat(drawn.texts()).contains("−17.4 (−26.0 to −8.1)", "+15 (+3 to +27)", "too few nights");
    }

    @Test
    void whatCannotBeComparedHasNoMarkButAReason() {
        Drawn drawn = Drawn.of(new IntervalPlot(
                        "I",
                        "%",
                        "",
                        "",
                        List.of(new IntervalPlot.Row("Guiding", NAN, NAN, NAN, IntervalPlot.Tone.OPEN, "not measured")))
                .svg("i", Form.NARROW));
        assertThat(drawn.elements("path", "open")).isEmpty();
        assertThat(drawn.texts()).contains("Guiding", "not measured");
    }

    @Test
    void filtersShareTheBarByTheirTime() {
        Drawn drawn = Drawn.of(new FilterShare(
                        "F",
                        List.of("L", "Ha"),
                        List.of(new FilterShare.Share("L", 3600), new FilterShare.Share("Ha", 3 * 3600)))
                .svg("f", Form.WIDE));
        List<Element> bars = drawn.elements("rect", "bar");
        assertThat(Drawn.number(bars.get(0), "width")).isCloseTo(712 * 0.75, offset(0.01));
        assertThat(drawn.texts()).containsExactly("Ha 3.0 h (75 %)", "L 1.0 h (25 %)");
        assertThat(bars.get(0).getAttribute("class"))
                .as("the second look, whatever the order drawn")
                .startsWith("s2");
    }

    private static TrainDrawing train(double actualMm, double requiredMm, double toleranceMm) {
        return new TrainDrawing("T", Samples.train().parts(), List.of(), requiredMm, actualMm, toleranceMm, NAN);
    }
}
