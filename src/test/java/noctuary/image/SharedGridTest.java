package noctuary.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import noctuary.image.SharedGrid.Laid;
import org.junit.jupiter.api.Test;

class SharedGridTest {
    private static final Affine AS_STORED = Affine.SAME;

    private static Affine turned(double degrees, double scale, double x, double y) {
        double c = scale * Math.cos(Math.toRadians(degrees));
        double s = scale * Math.sin(Math.toRadians(degrees));
        return new Affine(c, -s, x, s, c, y);
    }

    @Test
    void ofOnePictureItIsThatPicture() {
        SharedGrid grid = SharedGrid.of(List.of(new Laid(Affine.SAME, 300, 200)), AS_STORED);
        assertThat(grid.width()).isEqualTo(300);
        assertThat(grid.height()).isEqualTo(200);
        assertThat(grid.toReference().x(0, 0)).isCloseTo(0, within(1e-9));
        assertThat(grid.toReference().y(299, 199)).isCloseTo(199, within(1e-9));
    }

    @Test
    void ofTwoItIsWhatBothShowAsFineAsTheFiner() {
        Laid coarse = new Laid(Affine.SAME, 300, 200);
        Laid fine = new Laid(Affine.shift(100, 50).after(Affine.enlarged(0.5)), 500, 400);
        SharedGrid grid = SharedGrid.of(List.of(coarse, fine), AS_STORED);
        assertThat(grid.width()).as("from 99.5 to 299.5, half a pixel each").isEqualTo(400);
        assertThat(grid.height()).isEqualTo(300);
        assertThat(grid.toReference().area()).isCloseTo(0.25, within(1e-9));
    }

    @Test
    void aPatchThatLiesAskewLosesItsTipsRatherThanShowingMuchEmptiness() {
        Laid reference = new Laid(Affine.SAME, 400, 400);
        Affine half = turned(45, 1, 200, 200 - 200 * Math.sqrt(2));
        SharedGrid grid = SharedGrid.of(List.of(reference, new Laid(half, 400, 400)), AS_STORED);
        assertThat(grid.width()).isLessThan(400).isGreaterThan(200);
    }

    @Test
    void oneThatSharesTooLittleDoesNotShrinkThePatch() {
        Laid reference = new Laid(Affine.SAME, 300, 200);
        Laid beside = new Laid(Affine.shift(290, 0), 300, 200);
        SharedGrid grid = SharedGrid.of(List.of(reference, beside), AS_STORED);
        assertThat(grid.width()).isEqualTo(300);
    }

    @Test
    void theFirstRowOfFitsIsAtTheBottom() {
        Affine screen = new Affine(1, 0, 0, 0, -1, 0);
        SharedGrid grid = SharedGrid.of(List.of(new Laid(Affine.SAME, 300, 200)), screen);
        assertThat(grid.toReference().y(0, 0)).isCloseTo(199, within(1e-9));
        assertThat(grid.toReference().y(0, 199)).isCloseTo(0, within(1e-9));
    }

    @Test
    void aSmallerGridShowsTheSamePatch() {
        SharedGrid grid = SharedGrid.of(List.of(new Laid(Affine.SAME, 4000, 3000)), AS_STORED);
        SharedGrid small = grid.toWidth(1000);
        assertThat(small.height()).isEqualTo(750);
        assertThat(small.toReference().x(-0.5, 0)).isCloseTo(-0.5, within(1e-9));
        assertThat(small.toReference().x(999.5, 0)).isCloseTo(3999.5, within(1e-9));
        assertThat(grid.toWidth(5000)).isEqualTo(grid);
    }

    @Test
    void noGridIsLargerThanThePicturesThatAreRead() {
        Laid coarse = new Laid(Affine.SAME, 9000, 9000);
        Laid fine = new Laid(new Affine(0.25, 0, 0, 0, 0.25, 0), 36_000, 36_000);
        SharedGrid grid = SharedGrid.of(List.of(coarse, fine), AS_STORED);
        assertThat((double) grid.width() * grid.height()).isBetween(0.99 * 1e8, 1e8);
    }
}
