package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.effect.StarFates.Bin;
import noctuary.stars.Star;
import noctuary.stats.Robust;

/**
 * Looks at the place of every star in both layers: is its light there? Detection is not repeated, because a threshold
 * over smoothed noise would find other stars, or none, without any light having gone.
 */
final class FateCount {
    private static final double[] EDGES = {0, 10, 20, 50, Double.POSITIVE_INFINITY};
    /** Less of its light than this, and a star is lost; more of it new, and it is invented. */
    private static final double HALF = 0.5;

    private static final double SURE_SIGMAS = 5;
    private static final double TOLD_SIGMAS = 3;
    private static final int FEWEST_BLANKS = 20;

    /** So near to half of the light, noise and neighbours decide. */
    private static final double NEAR_HALF = 0.1;

    private final List<Tile> tiles;
    private final Map<Tile, float[]> stretched;
    private final Map<Tile, float[]> shown;
    private final Map<Tile, float[]> change;
    private final Aperture aperture;
    private final Aperture wide;
    private final double fwhm;
    private final double blankStretched;
    private final double blankShown;
    private int told;
    private int near;

    /** The origin stands under the stretch without an end at black: a star that the black point swallows is lost. */
    FateCount(Layers layers, Ground ground, double fwhm) {
        this.tiles = layers.tiles();
        this.stretched = layers.endless();
        this.shown = layers.shown();
        this.change = layers.change();
        this.aperture = new Aperture(fwhm, 0);
        this.wide = new Aperture(fwhm, ground.smear());
        this.fwhm = fwhm;
        this.blankStretched = blanks(ground.blocks(), stretched);
        this.blankShown = blanks(ground.blocks(), shown);
    }

    /** Scatter of the light in apertures on nothing; NaN when there are too few. */
    private double blanks(List<Block> blocks, Map<Tile, float[]> layers) {
        List<Double> lights = new ArrayList<>();
        int pace = (int) Math.max(4, Math.ceil(2 * fwhm));
        for (Block block : blocks) {
            for (int y = pace / 2; y < Block.SIDE; y += pace) {
                for (int x = pace / 2; x < Block.SIDE; x += pace) {
                    double px = block.tile().x() + block.left() + x;
                    double py = block.tile().y() + block.top() + y;
                    if (block.free()[y * Block.SIDE + x] && aperture.fits(block.tile(), px, py)) {
                        lights.add(aperture.light(block.tile(), layers.get(block.tile()), px, py));
                    }
                }
            }
        }
        return lights.size() < FEWEST_BLANKS
                ? Double.NaN
                : Robust.sigma(lights.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /**
     * @param seen stars found on the picture
     */
    StarFates count(List<Star> stars, List<Star> seen, Laying laying) {
        int[][] counts = new int[EDGES.length - 1][2];
        for (Star star : stars) {
            double[] at = laying.onPicture(star);
            tileOf(at).ifPresent(tile -> {
                double before = aperture.light(tile, stretched.get(tile), at[0], at[1]);
                double after = before + wide.light(tile, change.get(tile), at[0], at[1]);
                if (before > TOLD_SIGMAS * blankStretched) {
                    told++;
                    near += Math.abs(after / before - HALF) < NEAR_HALF ? 1 : 0;
                    counts[bin(star.snr())][after >= HALF * before ? 0 : 1]++;
                }
            });
        }
        List<Bin> bins = new ArrayList<>();
        for (int b = 0; b < counts.length; b++) {
            bins.add(new Bin(EDGES[b], EDGES[b + 1], counts[b][0], counts[b][1]));
        }
        return new StarFates(bins, invented(stars, seen, laying));
    }

    /** Share of the stars counted last that keep about half of their light. */
    double halved() {
        return near / (double) Math.max(1, told);
    }

    private int invented(List<Star> stars, List<Star> seen, Laying laying) {
        List<double[]> known = stars.stream().map(laying::onPicture).toList();
        int invented = 0;
        for (Star star : seen) {
            double[] at = {star.x(), star.y()};
            Optional<Tile> tile = tileOf(at);
            boolean old = known.stream().anyMatch(k -> Math.hypot(k[0] - at[0], k[1] - at[1]) < fwhm);
            if (tile.isPresent() && !old) {
                double after = aperture.light(tile.get(), shown.get(tile.get()), at[0], at[1]);
                double before = aperture.light(tile.get(), stretched.get(tile.get()), at[0], at[1]);
                boolean sure = after > SURE_SIGMAS * Math.max(blankShown, blankStretched);
                invented += sure && before < HALF * after ? 1 : 0;
            }
        }
        return invented;
    }

    private Optional<Tile> tileOf(double[] at) {
        return tiles.stream().filter(tile -> wide.fits(tile, at[0], at[1])).findFirst();
    }

    private static int bin(double snr) {
        int bin = 0;
        while (snr >= EDGES[bin + 1]) {
            bin++;
        }
        return bin;
    }
}
