package noctuary.match;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Fits an accepted transform to all stars that both lists hold. */
final class FinalFit {
    private static final double FIRST_REACH_PX = 6;
    private static final double LEAST_REACH_PX = 0.4;
    private static final double CLIP_SIGMAS = 3.5;
    private static final double SPACING_SHARE = 0.3;
    private static final int ROUNDS = 8;

    private final Points a;
    private final Points b;

    FinalFit(Points a, Points b) {
        this.a = a;
        this.b = b;
    }

    Match of(Similarity accepted) {
        Pairing pairing = new Pairing(a, b);
        Similarity s = accepted;
        double coarser = Math.max(1, s.scale());
        double spacing = Math.sqrt(b.area() / b.size());
        double farthest =
                Math.max(LEAST_REACH_PX * coarser, Math.min(FIRST_REACH_PX * coarser, SPACING_SHARE * spacing));
        double reach = farthest;
        pairing.pair(s, farthest);
        for (int round = 0; round < ROUNDS && pairing.size() >= Chance.FEWEST_STARS; round++) {
            s = pairing.fit(s);
            pairing.pair(s, farthest);
            pairing.keep(s, reach, CLIP_SIGMAS);
            reach = Math.min(reach, Math.max(CLIP_SIGMAS * pairing.sigma(), LEAST_REACH_PX * coarser));
            pairing.keep(s, reach, CLIP_SIGMAS);
        }
        return new Match(s.alignment(pairing.size(), pairing.rms()), pairs(pairing));
    }

    private List<Match.Pair> pairs(Pairing pairing) {
        return IntStream.range(0, pairing.size())
                .mapToObj(p -> new Match.Pair(a.index[pairing.fromRank(p)], b.index[pairing.toRank(p)]))
                .sorted(Comparator.comparingInt(Match.Pair::from))
                .toList();
    }
}
