package noctuary.effect;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/**
 * Finds the stretch that leads from the origin to the picture, or nothing when no single one does. Smoothing may have
 * come before the stretch or after it: where the noise shows that there was some, both are tried, and what explains the
 * cells with stars better stands.
 */
final class StretchFinder {
    private static final int FEWEST_CELLS = 40;
    /** The table is believed when it lessens the misfit of the calm cells to this share. */
    private static final double BETTER = 0.6;

    /** And when it is this large at all, as a share of white. */
    private static final double SEEN = 0.0015;

    /** Most misfit of calm cells, as a share of white, and of the spread of the cells. */
    private static final double MOST_MISFIT = 0.02;

    private static final double MOST_SHARE = 0.5;
    private static final double UNSEEN_MISFIT = 0.002;
    private static final double STARRY = 0.85;

    private final List<Tile> tiles;
    private final List<Block> background;

    StretchFinder(List<Tile> tiles, List<Block> background) {
        this.tiles = tiles;
        this.background = background;
    }

    Optional<Transfer> find() {
        Optional<Found> plain = find(Cells.of(tiles));
        if (plain.isEmpty() || background.isEmpty()) {
            return plain.map(Found::transfer);
        }
        double sigma = Softening.sigmaPx(noiseRatio(plain.get().transfer()));
        if (sigma == 0) {
            return plain.map(Found::transfer);
        }
        Optional<Found> soft = find(Cells.of(Softening.of(tiles, sigma)));
        return soft.filter(s -> s.starMisfit() < plain.get().starMisfit())
                .or(() -> plain)
                .map(Found::transfer);
    }

    /** @param starMisfit median misfit of the cells that vary most within */
    private record Found(Transfer transfer, double starMisfit) {}

    private double noiseRatio(Transfer transfer) {
        Map<Tile, float[]> stretched = new IdentityHashMap<>();
        Map<Tile, float[]> shown = new IdentityHashMap<>();
        for (Tile tile : tiles) {
            stretched.put(tile, transfer.forward(tile.origin()));
            shown.put(tile, tile.picture());
        }
        return new BackgroundNoise(background, shown).sigma(1) / new BackgroundNoise(background, stretched).sigma(1);
    }

    private Optional<Found> find(Cells cells) {
        if (cells.size() < FEWEST_CELLS) {
            return Optional.empty();
        }
        CurveFit fit = new CurveFit(cells);
        Curve curve = fit.fit();
        if (!(curve.height() > 0) || !Double.isFinite(curve.softness())) {
            return Optional.empty();
        }
        double[] levels = cells.levels();
        double[] off = fit.misfits(curve);
        double[] doubts = fit.doubts(curve);
        Bends bends = Bends.of(levels, off, doubts);
        double[] left = IntStream.range(0, off.length)
                .mapToDouble(k -> off[k] - bends.at(levels[k]))
                .toArray();
        double curved = calmMisfit(off, doubts);
        boolean better = curved > SEEN && calmMisfit(left, doubts) < BETTER * curved;
        double misfit = better ? calmMisfit(left, doubts) : curved;
        double spread = Robust.sigma(cells.picture());
        if (misfit > MOST_MISFIT || misfit > MOST_SHARE * spread && misfit > UNSEEN_MISFIT) {
            return Optional.empty();
        }
        return Optional.of(
                new Found(transfer(curve, better ? bends : Bends.NONE), starMisfit(better ? left : off, doubts)));
    }

    private Transfer transfer(Curve curve, Bends bends) {
        float low = Float.POSITIVE_INFINITY;
        float high = Float.NEGATIVE_INFINITY;
        for (Tile tile : tiles) {
            for (float value : tile.origin()) {
                low = value < low ? value : low;
                high = value > high ? value : high;
            }
        }
        double top = Math.min(Math.max(high, curve.reaches(1)), 1e6 * Math.max(1, Math.abs(high)));
        return new Transfer(curve, bends, Math.min(low, curve.reaches(0)), top);
    }

    /** Root mean square misfit of the surer half of the cells. */
    private static double calmMisfit(double[] off, double[] doubts) {
        double middle = Robust.median(doubts);
        return Math.sqrt(IntStream.range(0, off.length)
                .filter(k -> doubts[k] <= middle)
                .mapToDouble(k -> off[k] * off[k])
                .average()
                .orElse(0));
    }

    private static double starMisfit(double[] off, double[] doubts) {
        double starry = Robust.quantile(doubts, STARRY);
        return Robust.median(IntStream.range(0, off.length)
                .filter(k -> doubts[k] >= starry)
                .mapToDouble(k -> Math.abs(off[k]))
                .toArray());
    }
}
