package noctuary.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import noctuary.match.StarPairs.Shared;
import org.junit.jupiter.api.Test;

class BestFitTest {
    /** Four corners of a square of side 2, sigma 0.1, scale 1: shift and turn each 2 x 0.02 / 4; from the formula. */
    @Test
    void fourCornersByHand() {
        List<Shared> corners = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            double x = i % 2 * 2;
            double y = i / 2 * 2;
            corners.add(new Shared(x, y, StarPairs.star(x, y, 1), StarPairs.star(x, y, 1), 0.1));
        }
        Alignment still = new Alignment(1, 0, false, 0, 0, 4, 0);
        BestFit best = BestFit.of(new StarPairs(List.of(), List.of(), still, corners));
        assertThat(best.expectedPx()).isCloseTo(Math.sqrt(0.02), within(1e-12));
        assertThat(best.drawnPx()).isCloseTo(0, within(1e-12));
        assertThat(best.residualPx()).isCloseTo(0.2, within(1e-12));
    }

    /** Mean squares of many draws against the expectation: 300 draws of 4 numbers scatter by 1 / √600 = 4 %. */
    @Test
    void whatIsDrawnIsWhatIsExpected() {
        Random random = new Random(21);
        double sum = 0;
        for (int i = 0; i < 300; i++) {
            BestFit best = BestFit.of(StarPairs.whole(random));
            sum += Math.pow(best.drawnPx() / best.expectedPx(), 2) / 300;
        }
        assertThat(sum).isCloseTo(1, within(0.13));
    }
}
