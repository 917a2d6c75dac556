package noctuary.review;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import noctuary.stats.Power;
import noctuary.stats.Regression;

/**
 * What so many nights can show, and how many more a verdict would take, from how much these scatter.
 *
 * @param sd from night to night on the measure's scale, inside blocks and sides, without what the measure follows where the
 *     nights afford to take that out; absent when nothing is left over to judge by
 * @param before middle value before, in the unit
 * @param level that p is held against
 */
record Scatter(Design design, Scale scale, OptionalDouble sd, double before, double level, int conditions) {
    /** A change worth knowing of, as a share of the value before. */
    static final double WORTH = 0.2;

    /** Chance to show it. */
    private static final double POWER = 0.8;

    private static final int MOST = 200;

    static Scatter of(Candidate candidate, double before, double level) {
        Design design = candidate.design();
        List<Influence> needed = candidate.needed();
        List<Influence> taken = Adjustment.affords(design, needed.size()) ? needed : List.of();
        OptionalDouble sd = design.blocks().isEmpty()
                ? OptionalDouble.empty()
                : Adjustment.fit(design, candidate.scale(), taken)
                        .map(Regression::residualSd)
                        .filter(s -> s > 0)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty());
        return new Scatter(design, candidate.scale(), sd, before, level, needed.size());
    }

    /** More nights on both sides for a change of {@link #WORTH}. */
    Wanted wanted() {
        double worth = scale.step(WORTH, before);
        OptionalInt enough = sd.isPresent() && worth > 0
                ? Power.perSide(worth / sd.getAsDouble(), POWER, level, MOST)
                : OptionalInt.empty();
        int have = design.values(false);
        int since = design.values(true);
        int fewest = Math.max(Math.max(fewest(level), forConditions()), Math.min(have, since) + 1);
        int each = Math.max(enough.orElse(0), fewest);
        return new Wanted(Math.max(0, each - have), Math.max(0, each - since), enough.isPresent() ? WORTH : 0);
    }

    /** The smallest change that these nights would show in four reviews out of five, as a share of the value before. */
    OptionalDouble detectableShare() {
        int have = design.values(false);
        int since = design.values(true);
        if (sd.isEmpty() || before <= 0 || Math.min(have, since) < 2) {
            return OptionalDouble.empty();
        }
        double step = Power.detectable(have, since, POWER, level) * sd.getAsDouble();
        return OptionalDouble.of(scale.share(step, before));
    }

    /** Nights on each side below which no p reaches the level: 2 / C(2 n, n). */
    static int fewest(double level) {
        double p = 1;
        int n = 1;
        while (p > level) {
            n++;
            p *= n / (2.0 * (2 * n - 1));
        }
        return n;
    }

    /** Half of what it takes on both sides together to take out what the measure follows. */
    private int forConditions() {
        int nights = conditions * Adjustment.NIGHTS_A_CONDITION
                + Math.max(0, design.blocks().size() - 1);
        return (nights + 1) / 2;
    }
}
