package noctuary.effect;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import noctuary.stats.Robust;

/**
 * The stretch as the means over cells tell it. Something that smooths or sharpens may have come before the stretch or
 * after it: the light of whole stars is held against it both ways.
 *
 * @param starMisfit median misfit of the cells that vary most within, as a share of their light, nearly
 */
record CellStretch(Transfer transfer, double starMisfit) {
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

    /** By small cells all over the field; nothing where no single curve leads from the origin to the picture. */
    static Optional<CellStretch> plain(List<Tile> tiles) {
        return find(tiles, Cells.of(tiles), Cells.SIDE);
    }

    /** As if a median over a square had come before the stretch. */
    static Optional<CellStretch> median(List<Tile> tiles, int reach) {
        return find(tiles, Cells.ofMedians(tiles, reach), Cells.SIDE);
    }

    /** What conserves the light of whole stars best, on the picture or with the stretch undone. */
    static Optional<CellStretch> light(List<Tile> tiles) {
        Cells cells = Cells.whole(tiles);
        if (cells.size() < FEWEST_CELLS) {
            return Optional.empty();
        }
        return Stream.of(find(tiles, cells, Cells.WHOLE_SIDE), reversed(tiles, cells))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(CellStretch::starMisfit));
    }

    private static Optional<CellStretch> reversed(List<Tile> tiles, Cells cells) {
        ReverseFit fit = new ReverseFit(cells);
        Curve curve = fit.fit();
        return curve.height() > 0 && curve.softness() > 0
                ? Optional.of(new CellStretch(
                        Transfer.over(tiles, curve, Bends.NONE, false),
                        Cells.WHOLE_SIDE * starMisfit(fit.misfits(curve), cells.spreads())))
                : Optional.empty();
    }

    private static Optional<CellStretch> find(List<Tile> tiles, Cells cells, int side) {
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
        return Optional.of(new CellStretch(
                Transfer.over(tiles, curve, better ? bends : Bends.NONE, better),
                side * starMisfit(better ? left : off, cells.spreads(curve))));
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
