package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import noctuary.review.SimulatedJournal.Plan;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;

/** The bench's claims on few journals; each bound is crossed by chance once in two thousand at the worst allowed rate. */
class CalibrationTest {
    private static final int JOURNALS = 200;
    private static final int WITH_GAIN = 80;
    private static final double SURE = 0.9995;

    @Test
    void withoutAChangeNothingIsSaid() {
        Tally tally = IntStream.range(0, JOURNALS)
                .mapToObj(i -> {
                    SplittableRandom random = new SplittableRandom(9_000_000 + i);
                    int before = random.nextInt(2, 21);
                    return Tally.of(new Plan(before, random.nextInt(2, 21), 0, false), random.nextLong());
                })
                .reduce(Tally.NONE, Tally::plus);
        assertThat(tally.alarms())
                .isLessThanOrEqualTo(new BinomialDistribution(JOURNALS, 0.05).inverseCumulativeProbability(SURE));
        assertThat(tally.naive()).as("frames taken for nights").isGreaterThan(JOURNALS / 2);
    }

    /** One interval a journal, so that they are independent. */
    @Test
    void theIntervalHoldsTheTruth() {
        int covered = 0;
        for (int i = 0; i < JOURNALS; i++) {
            MeasureReview review = Judgement.of(
                            Set.of(Influence.RIG),
                            SimulatedJournal.draw(new Plan(8, 8, 0.2, false), 500 + i)
                                    .measures()
                                    .subList(0, 1))
                    .get(0);
            Shift shift = review.grounds().plain().orElseThrow();
            covered +=
                    shift.shareLow().orElseThrow() <= -0.2 && shift.shareHigh().orElseThrow() >= -0.2 ? 1 : 0;
        }
        assertThat(covered)
                .isBetween(
                        new BinomialDistribution(JOURNALS, 0.94).inverseCumulativeProbability(1 - SURE),
                        new BinomialDistribution(JOURNALS, 0.97).inverseCumulativeProbability(SURE));
    }

    /** Where one test sees it and the other does not, either is as likely to be ours if ours is as good. */
    @Test
    void aFifthLessIsSeenAsOftenAsTheBestExactTestSeesIt() {
        for (boolean paired : new boolean[] {false, true}) {
            List<Tally> tallies = IntStream.range(0, WITH_GAIN)
                    .mapToObj(i -> Tally.of(new Plan(12, 12, 0.2, paired), 3_000 + i))
                    .toList();
            notBehind(tallies, Tally::alone, Tally::rank);
            notBehind(tallies, Tally::alone, Tally::relabelled);
            notBehind(tallies, Tally::alone, Tally::logs);
            notBehind(tallies, Tally::better, Tally::logsHolm);
        }
    }

    private static void notBehind(List<Tally> tallies, ToIntFunction<Tally> ours, ToIntFunction<Tally> theirs) {
        int won = 0;
        int lost = 0;
        for (Tally tally : tallies) {
            won += ours.applyAsInt(tally) > theirs.applyAsInt(tally) ? 1 : 0;
            lost += ours.applyAsInt(tally) < theirs.applyAsInt(tally) ? 1 : 0;
        }
        assertThat(lost)
                .as("seen by the other test alone, %d by ours alone", won)
                .isLessThanOrEqualTo(new BinomialDistribution(won + lost, 0.5).inverseCumulativeProbability(SURE));
    }
}
