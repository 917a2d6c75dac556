package noctuary.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import noctuary.stats.Family;

/**
 * What the nights before and after a change allow to be said of each measure.
 *
 * <p>The order of questions: are there nights on both sides; did something else change for good between them; could so few
 * nights ever reach the level, all measures together (Tarone 1990); do the skies overlap; and only then what the values
 * say, each p corrected for the others (Holm 1979, the primary measure with half of the level). All but the last look at the nights and not at their values, so that
 * they cannot lean. An interval is given where it speaks of the change: not when something else stands between the sides, nor
 * when the nights are too few to take out the airmass or Moon that the measure follows.
 */
public final class Judgement {
    private static final double ALPHA = 0.05;

    /** Fewer nights on a side show nothing, whatever p says; handbook of the project, section 7.6. */
    private static final int FEWEST_NIGHTS = 3;

    private Judgement() {}

    /**
     * One review for each measure, in their order.
     *
     * @param changed what differs between the sides by the change itself, such as the rig: no reason against it
     * @param measures compared together
     */
    public static List<MeasureReview> of(Set<Influence> changed, List<MeasureNights> measures) {
        return of(changed, measures, Tested.Before.NOTHING);
    }

    static List<MeasureReview> of(Set<Influence> changed, List<MeasureNights> measures, Tested.Before before) {
        List<Candidate> all =
                measures.stream().map(m -> Candidate.of(changed, m, before)).toList();
        List<Candidate> open = all.stream().filter(Judgement::isOpen).toList();
        double[] weights = weights(open);
        boolean[] testable = Family.testable(
                ALPHA, open.stream().mapToDouble(Candidate::smallestP).toArray(), weights);
        List<Candidate> tested = IntStream.range(0, testable.length)
                .filter(i -> testable[i])
                .mapToObj(open::get)
                .toList();
        double[] holm = Family.holm(tested.stream().mapToDouble(Candidate::p).toArray(), weights(tested));
        double sum = Arrays.stream(weights).sum();
        List<MeasureReview> reviews = new ArrayList<>();
        for (Candidate candidate : all) {
            int at = tested.indexOf(candidate);
            OptionalDouble adjusted = at < 0 ? OptionalDouble.empty() : OptionalDouble.of(holm[at]);
            int place = open.indexOf(candidate);
            double level = place < 0 ? ALPHA / Math.max(measures.size(), 1) : ALPHA * weights[place] / sum;
            reviews.add(review(candidate, adjusted, level));
        }
        return reviews;
    }

    /** The primary measure weighs as much as all the others together. */
    private static double[] weights(List<Candidate> candidates) {
        long others = candidates.stream().filter(c -> !c.nights().primary()).count();
        return candidates.stream()
                .mapToDouble(c -> c.nights().primary() ? Math.max(others, 1) : 1)
                .toArray();
    }

    /** Whether a verdict is possible but for the number of measures. */
    private static boolean isOpen(Candidate candidate) {
        Design design = candidate.design();
        return against(candidate).isEmpty()
                && Math.min(design.values(false), design.values(true)) >= FEWEST_NIGHTS
                && candidate.separates();
    }

    /**
     * Conditions that stand between the sides. Apart in airmass, Moon or season counts once that would be a surprise: few
     * nights lie apart by chance. A target counts when the nights would have been enough, and their targets are not.
     */
    private static List<Influence> against(Candidate candidate) {
        Design design = candidate.design();
        List<Influence> against = new ArrayList<>(candidate.ground().against());
        if (Math.min(design.count(false), design.count(true)) < 2) {
            return List.of();
        }
        if (design.smallestP() > ALPHA && design.smallestPByNight() <= ALPHA) {
            against.add(Influence.TARGET);
        }
        if (design.smallestPByNight() <= ALPHA) {
            against.addAll(Overlap.against(
                    candidate.nights().measure(),
                    design.nights().stream().flatMap(List::stream).toList()));
        }
        return against;
    }

    private static MeasureReview review(Candidate candidate, OptionalDouble holm, double level) {
        List<Influence> against = against(candidate);
        Optional<Shift> shift = candidate.decides() ? candidate.adjustedShift() : candidate.plain();
        Optional<Shift> bounds = shift.filter(s -> s.bounded() && against.isEmpty() && candidate.separates());
        Verdict verdict = verdict(candidate, against, holm, shift);
        OptionalDouble before = candidate.middle(false);
        Scatter scatter = Scatter.of(candidate, before.orElse(0), level);
        Grounds grounds = new Grounds(
                candidate.count(false),
                candidate.count(true),
                candidate.design().pairs(),
                candidate.setAside(),
                candidate.plain(),
                candidate.adjustedShift(),
                candidate.adjusted().map(Adjustment::taken).orElse(List.of()),
                candidate.decides(),
                against,
                candidate.unknown(),
                candidate.test().map(t -> t.exact()).orElse(true),
                candidate.cliff(),
                scatter.detectableShare(),
                verdict == Verdict.TOO_FEW ? Optional.of(scatter.wanted()) : Optional.empty());
        return new MeasureReview(
                candidate.nights(),
                before,
                candidate.middle(true),
                part(shift, Shift::value),
                part(bounds, Shift::low),
                part(bounds, Shift::high),
                part(bounds, Shift::coverage),
                part(bounds, Shift::p),
                holm,
                verdict,
                Sentence.of(candidate.nights().measure(), verdict, shift, grounds),
                grounds);
    }

    private static Verdict verdict(
            Candidate candidate, List<Influence> against, OptionalDouble holm, Optional<Shift> shift) {
        if (!against.isEmpty()) {
            return Verdict.CONFOUNDED;
        }
        if (holm.isEmpty()) {
            return Verdict.TOO_FEW;
        }
        if (holm.getAsDouble() > ALPHA) {
            return Verdict.NO_DIFFERENCE;
        }
        boolean less = shift.orElseThrow().low() + shift.orElseThrow().high() < 0;
        return less == candidate.nights().measure().lessIsBetter() ? Verdict.BETTER : Verdict.WORSE;
    }

    private static OptionalDouble part(Optional<Shift> shift, ToDoubleFunction<Shift> part) {
        return shift.isPresent() ? OptionalDouble.of(part.applyAsDouble(shift.get())) : OptionalDouble.empty();
    }
}
