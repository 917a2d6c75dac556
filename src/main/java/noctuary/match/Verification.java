package noctuary.match;

import java.util.List;
import java.util.Optional;

/** Puts proposed transforms to the test on the brightest stars that both fields show. */
final class Verification {
    /** So unlikely an accident that no other proposal needs a look. */
    private static final double BEYOND_DOUBT = -15;
    /** Reach of the first pairing, pixels of the coarser image. */
    private static final double FIRST_REACH_PX = 12;
    /** Least reach, pixels of the coarser image. */
    private static final double LEAST_REACH_PX = 0.7;
    /** Reach as a share of the mean distance between stars: beyond it most pairs are accidents. */
    private static final double SPACING_SHARE = 0.3;

    private static final double REACH_SIGMAS = 4;
    private static final int ROUNDS = 6;
    /** Accidents are counted in this many times the reach, where the true pairs are few among them. */
    private static final double RING = 4;

    private final Points a;
    private final Points b;

    Verification(Points a, Points b) {
        this.a = a;
        this.b = b;
    }

    /** The proposal least likely an accident, refined; empty where none stands. */
    Optional<Similarity> best(List<Similarity> proposals) {
        Optional<Verdict> best = Optional.empty();
        for (Similarity proposal : proposals) {
            double least = best.map(Verdict::logAccidents).orElse(Chance.LIMIT);
            if (least < BEYOND_DOUBT) {
                break;
            }
            Optional<Verdict> better = test(proposal).filter(v -> v.logAccidents() < least);
            best = better.isPresent() ? better : best;
        }
        return best.map(Verdict::transform);
    }

    private record Verdict(Similarity transform, double logAccidents) {}

    private Optional<Verdict> test(Similarity proposal) {
        Overlap overlap = Overlap.of(a, b, proposal);
        if (overlap.fewestStars() < Chance.FEWEST_STARS || overlap.area() <= 0) {
            return Optional.empty();
        }
        Pairing pairing = new Pairing(overlap.a(), overlap.b());
        Similarity s = proposal;
        double coarser = Math.max(1, proposal.scale());
        double spacing = Math.sqrt(overlap.area() / overlap.b().size());
        double reach = Math.min(FIRST_REACH_PX * coarser, SPACING_SHARE * spacing);
        pairing.pair(s, reach);
        for (int round = 0; round < ROUNDS && pairing.size() >= Chance.FEWEST_STARS; round++) {
            s = pairing.fit(s);
            pairing.pair(s, reach);
            reach = Math.min(reach, Math.max(REACH_SIGMAS * pairing.sigma(), LEAST_REACH_PX * coarser));
            pairing.pair(s, reach);
        }
        return pairing.size() < Chance.FEWEST_STARS
                ? Optional.empty()
                : Optional.of(new Verdict(s, logAccidents(overlap, pairing, s, reach)));
    }

    /** With the density of stars over the whole overlap or as met around the pairs, whichever is higher. */
    private static double logAccidents(Overlap overlap, Pairing pairing, Similarity s, double reach) {
        int first = overlap.a().size();
        int second = overlap.b().size();
        double even = Chance.pairs(first, second, reach, overlap.area());
        int inRing = pairing.neighbours(s, RING * reach) - pairing.neighbours(s, reach);
        double met = inRing / (RING * RING - 1);
        return Chance.log10Accidents(pairing.size(), Math.max(even, met), first, second);
    }
}
