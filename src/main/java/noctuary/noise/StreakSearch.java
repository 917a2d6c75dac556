package noctuary.noise;

import java.util.List;
import java.util.stream.IntStream;

/** Looks for streaks in a frame: chooses quiet tiles, and trusts only what both halves of them show. */
final class StreakSearch {
    private static final double LEAST_SIGNIFICANCE = 7;
    private static final double LEAST_IN_HALF = 2.5;
    private static final double LEAST_STRENGTH = 0.05;

    private StreakSearch() {}

    static Streak find(List<QuietTile> tiles) {
        QuietTile.Power[] powers = tiles.parallelStream().map(QuietTile::power).toArray(QuietTile.Power[]::new);
        StreakFit whole = new StreakFit(Autocorrelation.of(powers));
        Streak best = whole.best();
        boolean convincing = best.significance() > LEAST_SIGNIFICANCE && best.strength() > LEAST_STRENGTH;
        return convincing && inBothHalves(powers, best) ? best : Streak.NONE;
    }

    private static boolean inBothHalves(QuietTile.Power[] powers, Streak streak) {
        if (powers.length < 2) {
            return true;
        }
        return IntStream.range(0, 2).allMatch(half -> {
            QuietTile.Power[] some = IntStream.range(0, powers.length)
                    .filter(i -> i % 2 == half)
                    .mapToObj(i -> powers[i])
                    .toArray(QuietTile.Power[]::new);
            return new StreakFit(Autocorrelation.of(some))
                            .along(streak.angleDeg())
                            .significance()
                    > LEAST_IN_HALF;
        });
    }
}
