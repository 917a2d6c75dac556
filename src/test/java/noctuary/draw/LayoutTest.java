package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Scales, rows, estimated text and the view of a field. */
class LayoutTest {
    @Test
    void aScaleMapsBothEndsAndTheMiddle() {
        Scale down = new Scale(0, 20, 300, 100);
        assertThat(List.of(down.at(0), down.at(20), down.at(5))).containsExactly(300.0, 100.0, 250.0);
        assertThat(down.length(5)).isEqualTo(50);
        assertThat(new Scale(3, 3, 10, 30).at(3)).isEqualTo(20);
    }

    @Test
    void rowsKeepStretchesApart() {
        Rows rows = new Rows(5);
        assertThat(rows.place(0, 50)).isZero();
        assertThat(rows.place(52, 90)).isEqualTo(1);
        assertThat(rows.place(56, 90)).isZero();
        assertThat(rows.place(40, 60)).isEqualTo(2);
        assertThat(rows.count()).isEqualTo(3);
    }

    @Test
    void wordsAreShortenedToTheirRoom() {
        String text = "from the terrace to the meadow";
        assertThat(Words.within(text, 1000, 14)).isEqualTo(text);
        String shorter = Words.within(text, 120, 14);
        assertThat(shorter).startsWith("from the").endsWith("…");
        assertThat(Words.width(shorter, 14)).isLessThanOrEqualTo(120);
        assertThat(Words.within("🌙🌙🌙🌙", 20, 14)).doesNotContain("?");
    }

    /** The centre of the first stored pixel is (0, 0); a frame of the sky shows its first row at the bottom. */
    @Test
    void aFieldOfTheSkyHasItsFirstRowAtTheBottom() {
        FieldView view = new FieldView(100, 50, 10, 20, 2, true);
        assertThat(view.x(0)).isEqualTo(11);
        assertThat(view.x(99.5)).isEqualTo(210);
        assertThat(view.y(0)).isEqualTo(119);
        assertThat(view.y(49.5)).isEqualTo(20);
    }

    @Test
    void aPictureHasItsFirstRowAtTheTop() {
        FieldView view = new FieldView(100, 50, 10, 20, 2, false);
        assertThat(view.y(0)).isEqualTo(21);
        assertThat(view.y(-0.5)).isEqualTo(20);
    }

    @Test
    void aFieldWithoutPixelsIsRefused() {
        assertThatThrownBy(() -> new StarOverlay("t", 0, 10, true, List.of()).both("x"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * Letters stay at 11 px or more where the narrow form is shown 340 px wide, and where the wide form is shown at the
     * 620 px at which the style sheet changes over; notes are 0.93 of the size.
     */
    @Test
    void lettersStayLegible() {
        assertThat(Form.NARROW.fontSize() * 0.93 * 340 / Form.NARROW.width()).isGreaterThan(11);
        assertThat(Form.WIDE.fontSize() * 0.93 * 620 / Form.WIDE.width()).isGreaterThan(11);
    }

    /** Axes have no heads: 10 and 170 degrees average to 0 (180), not to 90 (Mardia and Jupp 2000, 1.1, axial data). */
    @Test
    void longAxesAverageAsAxes() {
        MeanShape mean = MeanShape.of(List.of(new StarShape(0, 0, 2, 0.2, 10), new StarShape(0, 0, 4, 0.2, 170)));
        assertThat(mean.angleDeg()).isCloseTo(0, offset(1e-9));
        assertThat(mean.common()).isCloseTo(0.2 * Math.cos(Math.toRadians(20)), offset(1e-12));
        MeanShape none = MeanShape.of(List.of(new StarShape(0, 0, 2, 0.2, 0), new StarShape(0, 0, 4, 0.2, 90)));
        assertThat(none.common()).isCloseTo(0, offset(1e-12));
    }
}
