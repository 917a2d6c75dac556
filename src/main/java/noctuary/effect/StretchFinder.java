package noctuary.effect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import noctuary.stats.Robust;
import noctuary.stats.Selection;

/**
 * Finds the stretch that leads from the origin to the picture, or nothing when no single one does: from single pixels
 * where they follow a curve; else from curve and kernel together, where something smoothed or sharpened evenly; else from
 * the light of cells, held against the slope that the sky shows.
 */
final class StretchFinder {
    /** Misfit of curve and kernel below which they say all. */
    private static final double GOOD = 0.12;

    private static final double LITTLE = 0.3;
    private static final int SKY_PATCHES = 40;
    private static final int SLOPE_PATCHES = 400;
    private static final int FEWEST_STARS = 8;
    private static final int FEWEST_SKY = 12;
    /** Most of a kernel on its outermost rings when its sum is believed. */
    private static final double OUTER = 0.1;
    /** How far the slope about the sky may be off one that is believed, for widths of stars and the curve's strength. */
    private static final double NEAR = 0.05;

    /** Misfit of curve and kernel that is all noise that was added: as large as on the sky alone. */
    private static final double NOISY = 0.5;

    private static final double LIKE_SKY = 1.3;
    private static final double ERRORS = 2.5;
    private static final double FARTHEST = 0.4;
    /** A median stands against the conservation of light only when its misfit is this share of the other. */
    private static final double MUCH_BETTER = 0.5;

    private static final String UNEVEN = "what changed the noise did so unevenly, which hides the curve of the stretch";

    private final List<Tile> tiles;
    private final List<Block> background;

    StretchFinder(List<Tile> tiles, List<Block> background) {
        this.tiles = tiles;
        this.background = background;
    }

    Optional<Stretching> find() {
        if (background.isEmpty()) {
            return CellStretch.plain(tiles).map(cells -> Stretching.sure(cells.transfer()));
        }
        double sky = level(true);
        double noise = new BackgroundNoise(background, Layers.origin(tiles)).sigma(1);
        PixelStretch pixels = new PixelStretch(PixelCurve.of(tiles, sky, noise), sky, noise);
        if (pixels.enough()) {
            return Optional.of(pixels.of(tiles, CellChoice.peaks(tiles, Block.SIDE)));
        }
        return byKernel(sky, noise);
    }

    private double level(boolean origin) {
        return Robust.median(background.stream()
                .mapToDouble(block -> {
                    float[] values = block.values(
                            origin ? block.tile().origin() : block.tile().picture());
                    return Selection.median(values, values.length);
                })
                .toArray());
    }

    private Optional<Stretching> byKernel(double sky, double noise) {
        double shown = new BackgroundNoise(background, Layers.picture(tiles)).sigma(1);
        List<Patch> patches = new ArrayList<>(Patch.stars(tiles));
        boolean stars = patches.size() >= FEWEST_STARS;
        patches.addAll(Patch.sky(background, SKY_PATCHES));
        List<KernelStretch.Found> kernels = new ArrayList<>();
        if (stars) {
            KernelStretch fit = new KernelStretch(patches, sky, noise, level(false), LITTLE * shown);
            kernels.add(fit.before());
            kernels.add(fit.after());
            kernels.removeIf(k -> !(k.curve().height() > 0 && k.curve().softness() > 0));
            kernels.sort(Comparator.comparingDouble(KernelStretch.Found::misfit));
        }
        if (!kernels.isEmpty() && kernels.get(0).misfit() < GOOD) {
            return Optional.of(
                    Stretching.of(over(kernels.get(0).curve()), !kernels.get(0).before()));
        }
        return byCells(sky, noise, LITTLE * shown, kernels);
    }

    private Transfer over(Curve curve) {
        return Transfer.over(tiles, curve, Bends.NONE, false);
    }

    private Optional<Stretching> byCells(double sky, double noise, double scale, List<KernelStretch.Found> kernels) {
        Optional<CellStretch> plain = CellStretch.plain(tiles);
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        CellStretch light = CellStretch.light(tiles).orElse(plain.get());
        int reach = MedianOf.reach(noiseRatio(plain.get().transfer()));
        Optional<CellStretch> median = reach == 0 ? Optional.empty() : CellStretch.median(tiles, reach);
        if (median.isPresent() && median.get().starMisfit() < MUCH_BETTER * light.starMisfit()) {
            return median.map(m -> Stretching.sure(m.transfer()));
        }
        Transfer cells = light.transfer();
        List<Patch> patches = Patch.sky(background, SLOPE_PATCHES);
        if (patches.size() < FEWEST_SKY) {
            return Optional.of(Stretching.sure(cells));
        }
        KernelFit slope = KernelStretch.slope(patches, sky, scale);
        List<Transfer> all = new ArrayList<>(List.of(cells));
        kernels.stream()
                .filter(k -> k.misfit() > NOISY && k.misfit() < LIKE_SKY * slope.misfit())
                .forEach(k -> all.add(over(k.curve())));
        return Optional.of(nearest(all, slope, sky, Math.max(NEAR, ERRORS * slope.gainError(noise))));
    }

    /** The first whose slope about the sky is as the sky shows it, else the first with what the sky shows. */
    private static Stretching nearest(List<Transfer> all, KernelFit slope, double sky, double near) {
        Transfer first = all.get(0);
        double gain = slope.gain() / first.curve().slope(sky);
        if (!(slope.outer() < OUTER) || !(Math.abs(gain - 1) < FARTHEST)) {
            return Stretching.sure(first);
        }
        for (Transfer each : all) {
            double its = slope.gain() / each.curve().slope(sky);
            if (Math.abs(its - 1) < near) {
                return Stretching.sure(each);
            }
        }
        return new Stretching(first, gain, false, UNEVEN, "");
    }

    private double noiseRatio(Transfer transfer) {
        return new BackgroundNoise(background, Layers.picture(tiles)).sigma(1)
                / new BackgroundNoise(background, Layers.forward(tiles, transfer)).sigma(1);
    }
}
