package noctuary.noise;

import java.util.Arrays;
import java.util.List;
import noctuary.stats.Robust;

/**
 * Looks for streaks in a frame. Two things tell them from what is drawn out in the sky (a galaxy seen from its edge, the
 * veils of a nebula): they are narrower than the image of a star, and they are everywhere alike.
 */
final class StreakSearch {
    private static final double LEAST_SIGNIFICANCE = 7;
    private static final double LEAST_STRENGTH = 0.05;
    /** By how much the square of the significance must exceed that of a broad ridge: three standard errors. */
    private static final double LEAST_LEAD = 9;
    /** Share of the whole frame's that the middle one of the tiles must show. */
    private static final double LEAST_IN_TILES = 0.5;
    /** Pixels of a tile below which it is not asked. */
    private static final double LEAST_KNOWN = 4000;

    private StreakSearch() {}

    static Streak find(List<QuietTile> tiles) {
        FlatTile.Power[] powers = tiles.parallelStream()
                .map(FlatTile::new)
                .filter(tile -> tile.known() > LEAST_KNOWN)
                .map(FlatTile::power)
                .toArray(FlatTile.Power[]::new);
        if (powers.length == 0) {
            return Streak.NONE;
        }
        StreakFit whole = new StreakFit(Autocorrelation.of(powers));
        Streak best = whole.best();
        boolean convincing = best.significance() > LEAST_SIGNIFICANCE && best.strength() > LEAST_STRENGTH;
        return convincing && narrow(whole, best) && everywhere(powers, best) ? best : Streak.NONE;
    }

    private static boolean narrow(StreakFit whole, Streak streak) {
        double broad = whole.broadSignificance(streak);
        return streak.significance() * streak.significance() - broad * broad > LEAST_LEAD;
    }

    private static boolean everywhere(FlatTile.Power[] powers, Streak streak) {
        double[] share = Arrays.stream(powers)
                .parallel()
                .mapToDouble(power -> new StreakFit(Autocorrelation.of(new FlatTile.Power[] {power})).shareOf(streak))
                .toArray();
        return Robust.median(share) > LEAST_IN_TILES * streak.share();
    }
}
