package noctuary.review;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import noctuary.review.SimulatedJournal.Plan;
import noctuary.stats.Block;
import noctuary.stats.Family;
import noctuary.stats.RankSum;
import noctuary.stats.ShiftTest;
import noctuary.stats.SignedRank;
import noctuary.stats.StudentTest;

/**
 * What one simulated journal was told, as counts; they add up over journals. What only a true gain can show is counted only
 * with one.
 *
 * @param alarms a verdict "better" or "worse" of a measure that nothing truly happened to
 * @param better "better" for the first measure, among all measures
 * @param alone the same when it is the only measure asked for
 * @param intervals of 95 %, over all measures with one
 * @param covered of them that hold the truth
 * @param judged intervals behind a verdict other than too few or confounded
 * @param judgedCovered of them that hold the truth
 * @param rank p of the exact rank test of the first measure reaches the level, downwards; signed ranks for pairs
 * @param relabelled the exact test of means of the night values as they are
 * @param logs the exact test of means of their logarithms
 * @param logsHolm the test before this one, of all measures together by Holm, says "less" of the first
 * @param naive Welch's test over frames finds something in the first measure
 * @param naiveAny the same in any measure without a true change, by Holm
 */
record Tally(
        int journals,
        int alarms,
        int better,
        int alone,
        int intervals,
        int covered,
        int judged,
        int judgedCovered,
        int tooFew,
        int confounded,
        int rank,
        int relabelled,
        int logs,
        int logsHolm,
        int naive,
        int naiveAny) {
    static final Tally NONE = new Tally(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    private static final double ALPHA = 0.05;

    /** Measures that a true gain moves: the three of FWHM. */
    private static final int MOVED = 3;

    static Tally of(Plan plan, long seed) {
        SimulatedJournal journal = SimulatedJournal.draw(plan, seed);
        List<MeasureReview> reviews = Judgement.of(Set.of(Influence.RIG), journal.measures());
        boolean gains = plan.gain() > 0;
        int[] intervals = new int[4];
        boolean alarm = false;
        for (int m = 0; m < reviews.size(); m++) {
            double truth = m < MOVED ? plan.gain() : 0;
            alarm |= truth == 0 && said(reviews.get(m));
            count(reviews.get(m), truth, intervals);
        }
        MeasureReview first = reviews.get(0);
        return new Tally(
                1,
                one(alarm),
                one(first.verdict() == Verdict.BETTER),
                one(gains && alone(journal)),
                intervals[0],
                intervals[1],
                intervals[2],
                intervals[3],
                one(first.verdict() == Verdict.TOO_FEW),
                one(first.verdict() == Verdict.CONFOUNDED),
                one(gains && rank(journal, plan.paired())),
                one(gains && gain(relabelled(journal, 0, plan.paired(), Scale.PLAIN))),
                one(gains && gain(relabelled(journal, 0, plan.paired(), Scale.LOG))),
                one(gains && logsHolm(journal, plan.paired())),
                one(naive(journal.frames()) <= ALPHA),
                one(naiveAny(journal, plan.gain() == 0 ? 0 : MOVED)));
    }

    private static boolean alone(SimulatedJournal journal) {
        return Judgement.of(Set.of(Influence.RIG), journal.measures().subList(0, 1))
                        .get(0)
                        .verdict()
                == Verdict.BETTER;
    }

    Tally plus(Tally o) {
        return new Tally(
                journals + o.journals,
                alarms + o.alarms,
                better + o.better,
                alone + o.alone,
                intervals + o.intervals,
                covered + o.covered,
                judged + o.judged,
                judgedCovered + o.judgedCovered,
                tooFew + o.tooFew,
                confounded + o.confounded,
                rank + o.rank,
                relabelled + o.relabelled,
                logs + o.logs,
                logsHolm + o.logsHolm,
                naive + o.naive,
                naiveAny + o.naiveAny);
    }

    private static void count(MeasureReview review, double gain, int[] intervals) {
        if (review.coverage().orElse(0) < Candidate.LEVEL - 1e-9) {
            return;
        }
        Shift shift = review.grounds().decides()
                ? review.grounds().adjusted().orElseThrow()
                : review.grounds().plain().orElseThrow();
        boolean ratio = review.nights().measure().ratio();
        double low = ratio ? shift.shareLow().orElseThrow() : shift.low();
        double high = ratio ? shift.shareHigh().orElseThrow() : shift.high();
        int holds = one(low <= -gain && -gain <= high);
        intervals[0]++;
        intervals[1] += holds;
        if (review.verdict() != Verdict.TOO_FEW && review.verdict() != Verdict.CONFOUNDED) {
            intervals[2]++;
            intervals[3] += holds;
        }
    }

    private static boolean said(MeasureReview review) {
        return review.verdict() == Verdict.BETTER || review.verdict() == Verdict.WORSE;
    }

    private static int one(boolean happened) {
        return happened ? 1 : 0;
    }

    private static double[] values(List<NightValue> nights, Scale scale) {
        return nights.stream().mapToDouble(n -> scale.of(n.value())).toArray();
    }

    /** Less, and significantly: a test that says "more" has not seen the gain. */
    private static boolean gain(ShiftTest test) {
        return test.pOfSize() <= ALPHA && test.shift() < 0;
    }

    private static boolean rank(SimulatedJournal journal, boolean paired) {
        double[] before = values(journal.measures().get(0).before(), Scale.LOG);
        double[] after = values(journal.measures().get(0).after(), Scale.LOG);
        if (!paired) {
            RankSum test = RankSum.of(after, before, 0.95);
            return test.p() <= ALPHA && test.shift() < 0;
        }
        double[] d = IntStream.range(0, before.length)
                .mapToDouble(i -> after[i] - before[i])
                .toArray();
        SignedRank test = SignedRank.of(d, 0.95);
        return test.p() <= ALPHA && test.shift() < 0;
    }

    private static ShiftTest relabelled(SimulatedJournal journal, int m, boolean paired, Scale scale) {
        double[] before = values(journal.measures().get(m).before(), scale);
        double[] after = values(journal.measures().get(m).after(), scale);
        List<Block> blocks = paired
                ? IntStream.range(0, before.length)
                        .mapToObj(i -> new Block(new double[] {before[i]}, new double[] {after[i]}))
                        .toList()
                : List.of(new Block(before, after));
        return ShiftTest.of(blocks, 0.95, 7);
    }

    private static boolean logsHolm(SimulatedJournal journal, boolean paired) {
        double[] p = IntStream.range(0, journal.measures().size())
                .mapToDouble(m -> relabelled(journal, m, paired, Scale.LOG).pOfSize())
                .toArray();
        return Family.holm(p)[0] <= ALPHA
                && relabelled(journal, 0, paired, Scale.LOG).shift() < 0;
    }

    private static double naive(double[][] frames) {
        return StudentTest.welch(frames[1], frames[0]).p();
    }

    private static boolean naiveAny(SimulatedJournal journal, int from) {
        double[] p = journal.allFrames().stream()
                .skip(from)
                .mapToDouble(Tally::naive)
                .toArray();
        double[] holm = Family.holm(p);
        return IntStream.range(0, holm.length).anyMatch(i -> holm[i] <= ALPHA);
    }
}
