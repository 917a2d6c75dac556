package noctuary.match;

import java.util.List;
import java.util.Optional;
import noctuary.stars.Star;

/**
 * Two star lists laid on one another, and which star is which.
 *
 * @param pairs sorted by {@code from}; each star at most once
 */
public record Match(Alignment alignment, List<Pair> pairs) {
    /** Brightest stars whose triangles are tried first, and when that fails. */
    private static final int[] DEPTHS = {100, 800};

    public Match {
        pairs = List.copyOf(pairs);
    }

    /**
     * The same star in both lists.
     *
     * @param from index in the first list
     * @param to index in the second list
     */
    public record Pair(int from, int to) {}

    /**
     * Finds the similarity that lays {@code from} on {@code to} by the stars alone: any rotation and shift, mirrored or
     * not, scale 0.2 to 5, fields that overlap in part, lists of different depth.
     *
     * <p>Triangles of neighbouring stars with equal ratios of sides (Valdes et al. 1995, PASP 107, 1119) propose
     * transforms; where many propose the same one, it is fitted and put to the test. It stands only when so many stars
     * falling together has a chance below one in a million, counted over all transforms that two stars of each list
     * could propose. Nothing otherwise, and nothing for fewer than six stars.
     *
     * <p>The order of the lists does not matter. Only positions and fluxes are used; a star with a position that is not
     * finite is passed over, one without flux counts as the faintest.
     */
    public static Optional<Match> find(List<Star> from, List<Star> to) {
        Points a = Points.of(from);
        Points b = Points.of(to);
        if (a.size() < Chance.FEWEST_STARS || b.size() < Chance.FEWEST_STARS) {
            return Optional.empty();
        }
        Verification verification = new Verification(a, b);
        int deepest = Math.max(a.size(), b.size());
        for (int i = 0; i < DEPTHS.length; i++) {
            if (i > 0 && deepest <= DEPTHS[i - 1]) {
                break;
            }
            var proposals = new Votes(a, b).proposals(Triangles.of(a, DEPTHS[i]), Triangles.of(b, DEPTHS[i]));
            Optional<Similarity> found = verification.best(proposals);
            if (found.isPresent()) {
                return Optional.of(new FinalFit(a, b).of(found.get()));
            }
        }
        return Optional.empty();
    }
}
