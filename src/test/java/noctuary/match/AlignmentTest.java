package noctuary.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import noctuary.stars.Star;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Truth is simulated, see {@link StarPairs}; {@link AlignmentBench} runs the same on more pairs. */
class AlignmentTest {
    private static final int PAIRS = 60;

    @Test
    void findsEveryPairOfTheSameField() {
        allFound(new Random(11), StarPairs::whole);
    }

    @Test
    void findsCamerasOfDifferentField() {
        allFound(new Random(12), StarPairs::cameras);
    }

    @Test
    void refusesUnrelatedFields() {
        Random random = new Random(13);
        for (int i = 0; i < PAIRS; i++) {
            List<Star> from = brightest(StarPairs.whole(random).from());
            List<Star> to = brightest(StarPairs.whole(random).to());
            assertThat(Alignment.find(from, to)).as("pair %d", i).isEmpty();
        }
    }

    @Test
    void namesWhichStarIsWhich() {
        StarPairs pair = StarPairs.whole(new Random(14));
        Match match = Match.find(pair.from(), pair.to()).orElseThrow();
        assertThat(match.pairs()).hasSize(match.alignment().matched());
        double squares = 0;
        for (Match.Pair p : match.pairs()) {
            Star a = pair.from().get(p.from());
            Star b = pair.to().get(p.to());
            double[] q = match.alignment().apply(a.x(), a.y());
            squares += Math.pow(q[0] - b.x(), 2) + Math.pow(q[1] - b.y(), 2);
        }
        assertThat(Math.sqrt(squares / match.pairs().size()))
                .isCloseTo(match.alignment().rmsPx(), within(1e-9));
        assertThat(match.pairs())
                .extracting(Match.Pair::from)
                .doesNotHaveDuplicates()
                .isSorted();
        assertThat(match.pairs()).extracting(Match.Pair::to).doesNotHaveDuplicates();
    }

    @Test
    void theOrderOfTheListsDoesNotMatter() {
        StarPairs pair = StarPairs.whole(new Random(15));
        List<Star> shuffled = new ArrayList<>(pair.to());
        Collections.shuffle(shuffled, new Random(16));
        assertThat(Alignment.find(pair.from(), shuffled)).isEqualTo(Alignment.find(pair.from(), pair.to()));
    }

    @Test
    void swappedListsGiveTheWayBack() {
        StarPairs pair = StarPairs.whole(new Random(17));
        Alignment back = Alignment.find(pair.to(), pair.from()).orElseThrow();
        assertThat(pair.errorPx(back.inverse())).isLessThan(0.3);
    }

    @Test
    void tooFewStarsAreRefused() {
        List<Star> five = StarPairs.whole(new Random(18)).from().subList(0, 5);
        assertThat(Alignment.find(five, five)).isEmpty();
        assertThat(Alignment.find(List.of(), five)).isEmpty();
    }

    @Test
    void oddListsAreRefusedInTime() {
        Star lost = StarPairs.star(Double.NaN, 3, 100);
        List<Star> onePlace = Collections.nCopies(3000, StarPairs.star(7, 7, 100));
        List<Star> line = new ArrayList<>();
        for (int i = 0; i < 3000; i++) {
            line.add(StarPairs.star(i, 7, 100));
        }
        Assertions.assertTimeout(Duration.ofSeconds(10), () -> {
            assertThat(Alignment.find(Collections.nCopies(100, lost), onePlace)).isEmpty();
            assertThat(Alignment.find(onePlace, onePlace)).isEmpty();
            assertThat(Alignment.find(line, line)).isEmpty();
        });
    }

    /**
     * Root mean square error over the pairs below 0.15 px of the finer image and within 5 % of a fit that knows every
     * star for what it is; single pairs are listed by {@link AlignmentBench}.
     */
    @Test
    void theTransformIsAsGoodAsTheStarsAllow() {
        Random random = new Random(19);
        double found = 0;
        double best = 0;
        for (int i = 0; i < PAIRS; i++) {
            StarPairs pair = StarPairs.whole(random);
            found +=
                    Math.pow(pair.errorPx(Alignment.find(pair.from(), pair.to()).orElseThrow()), 2) / PAIRS;
            best += Math.pow(BestFit.of(pair).drawnPx(), 2) / PAIRS;
        }
        assertThat(Math.sqrt(found)).isLessThan(0.15).isLessThan(1.05 * Math.sqrt(best));
    }

    private static void allFound(Random random, Function<Random, StarPairs> draw) {
        for (int i = 0; i < PAIRS; i++) {
            StarPairs pair = draw.apply(random);
            Optional<Alignment> found = Alignment.find(pair.from(), pair.to());
            assertThat(found).as("pair %d", i).isPresent();
            assertThat(pair.errorPx(found.get())).as("pair %d", i).isLessThan(0.5);
            assertThat(found.get().mirrored()).isEqualTo(pair.truth().mirrored());
        }
    }

    private static List<Star> brightest(List<Star> stars) {
        return stars.stream()
                .sorted((a, b) -> Double.compare(b.flux(), a.flux()))
                .limit(250)
                .toList();
    }
}
