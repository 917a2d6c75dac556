package noctuary.effect;

import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import noctuary.stats.Robust;

/**
 * Finds the stretch that leads from the origin to the picture, or nothing when no single one does. Something that smooths
 * or sharpens may have come before the stretch or after it: where the noise shows that there was some, the light of whole
 * stars is held against it both ways, and a median, which keeps no light, is tried as such.
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
    /** A noise ratio nearer to 1 than this shows no step but the stretch. */
    private static final double SAME_NOISE = 0.03;
    /** A median stands against the conservation of light only when its misfit is this share of the other. */
    private static final double MUCH_BETTER = 0.5;

    private final List<Tile> tiles;
    private final List<Block> background;

    StretchFinder(List<Tile> tiles, List<Block> background) {
        this.tiles = tiles;
        this.background = background;
    }

    Optional<Transfer> find() {
        Optional<Found> plain = find(Cells.of(tiles), Cells.SIDE);
        if (plain.isEmpty() || background.isEmpty()) {
            return plain.map(Found::transfer);
        }
        double noiseRatio = noiseRatio(plain.get().transfer());
        if (Math.abs(noiseRatio - 1) < SAME_NOISE) {
            return plain.map(Found::transfer);
        }
        Found light = light().orElse(plain.get());
        int reach = MedianOf.reach(noiseRatio);
        Optional<Found> median = reach == 0 ? Optional.empty() : find(Cells.ofMedians(tiles, reach), Cells.SIDE);
        return median.filter(m -> m.starMisfit() < MUCH_BETTER * light.starMisfit())
                .or(() -> Optional.of(light))
                .map(Found::transfer);
    }

    /** What conserves the light of whole stars best, on the picture or with the stretch undone. */
    private Optional<Found> light() {
        Cells cells = Cells.whole(tiles);
        if (cells.size() < FEWEST_CELLS) {
            return Optional.empty();
        }
        return Stream.of(find(cells, Cells.WHOLE_SIDE), reversed(cells))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(Found::starMisfit));
    }

    private Optional<Found> reversed(Cells cells) {
        ReverseFit fit = new ReverseFit(cells);
        Curve curve = fit.fit();
        return curve.height() > 0 && curve.softness() > 0
                ? Optional.of(new Found(
                        transfer(curve, Bends.NONE),
                        Cells.WHOLE_SIDE * starMisfit(fit.misfits(curve), cells.spreads())))
                : Optional.empty();
    }

    /** @param starMisfit median misfit of the cells that vary most within, as a share of their light, nearly */
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

    private Optional<Found> find(Cells cells, int side) {
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
        return Optional.of(new Found(
                transfer(curve, better ? bends : Bends.NONE),
                side * starMisfit(better ? left : off, cells.spreads(curve))));
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

    private static double starMisfit(double[] off, double[] spreads) {
        double starry = Robust.quantile(spreads, STARRY);
        return Robust.median(IntStream.range(0, off.length)
                .filter(k -> spreads[k] >= starry)
                .mapToDouble(k -> Math.abs(off[k]) / spreads[k])
                .toArray());
    }
}
