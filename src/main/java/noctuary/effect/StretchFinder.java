package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/** Finds the stretch that leads from the origin to the picture, or nothing when no single one does. */
final class StretchFinder {
    private static final int FEWEST_CELLS = 40;
    private static final int GROUP = 24;
    private static final int MOST_GROUPS = 24;
    /** The table is believed when it lessens the misfit of the calm cells to this share. */
    private static final double BETTER = 0.6;
    /** Most misfit of calm cells, as a share of white, and of the spread of the cells. */
    private static final double MOST_MISFIT = 0.02;

    private static final double MOST_SHARE = 0.5;

    private final List<Tile> tiles;
    private final Cells cells;

    StretchFinder(List<Tile> tiles) {
        this.tiles = tiles;
        this.cells = Cells.of(tiles);
    }

    Optional<Transfer> find() {
        if (cells.size() < FEWEST_CELLS) {
            return Optional.empty();
        }
        CurveFit fit = new CurveFit(cells);
        Curve curve = fit.fit();
        if (!(curve.height() > 0) || !Double.isFinite(curve.softness())) {
            return Optional.empty();
        }
        double[] off = fit.misfits(curve);
        double[] doubts = fit.doubts(curve);
        Bends bends = bends(fit.levels(), off, doubts);
        double[] left = IntStream.range(0, off.length)
                .mapToDouble(k -> off[k] - bends.at(fit.levels()[k]))
                .toArray();
        boolean better = rms(left, doubts) < BETTER * rms(off, doubts);
        double misfit = rms(better ? left : off, doubts);
        double spread = Robust.sigma(cells.picture());
        if (misfit > MOST_MISFIT || misfit > MOST_SHARE * spread && misfit > 0.002) {
            return Optional.empty();
        }
        return Optional.of(transfer(curve, better ? bends : Bends.NONE));
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

    /** Median misfit of groups of cells of like level. */
    private static Bends bends(double[] levels, double[] off, double[] doubts) {
        int[] order = IntStream.range(0, levels.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> levels[k]))
                .mapToInt(Integer::intValue)
                .toArray();
        int groups = Math.min(MOST_GROUPS, Math.max(1, order.length / GROUP));
        List<Double> at = new ArrayList<>();
        List<Double> by = new ArrayList<>();
        for (int g = 0; g < groups; g++) {
            int[] group = Arrays.copyOfRange(order, g * order.length / groups, (g + 1) * order.length / groups);
            double level = Robust.median(Arrays.stream(group).mapToDouble(k -> levels[k]).toArray());
            if (at.isEmpty() || level > at.get(at.size() - 1)) {
                at.add(level);
                by.add(weightedMean(group, off, doubts));
            }
        }
        return new Bends(
                at.stream().mapToDouble(Double::doubleValue).toArray(),
                by.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static double weightedMean(int[] group, double[] off, double[] doubts) {
        double sum = 0;
        double weight = 0;
        for (int k : group) {
            sum += off[k] / (doubts[k] * doubts[k]);
            weight += 1 / (doubts[k] * doubts[k]);
        }
        return sum / weight;
    }

    /** Root mean square misfit of the surer half of the cells. */
    private static double rms(double[] off, double[] doubts) {
        double middle = Robust.median(doubts);
        return Math.sqrt(IntStream.range(0, off.length)
                .filter(k -> doubts[k] <= middle)
                .mapToDouble(k -> off[k] * off[k])
                .average()
                .orElse(0));
    }
}
