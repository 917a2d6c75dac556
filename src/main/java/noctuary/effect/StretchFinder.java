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
    private static final int FEWEST_STARS = 8;
    /** Misfit of curve and kernel that is all noise that was added: as large as on the sky alone. */
    private static final double NOISY = 0.5;

    private static final double LIKE_SKY = 1.3;
    /** A median stands against the conservation of light only when its misfit is this share of the other. */
    private static final double MUCH_BETTER = 0.5;

    private static final String UNEVEN =
            "no simple curve has both the slope that the sky shows and what the stars became, so the stretch about stars"
                    + " is not known well enough";

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
        BackgroundNoise origin = new BackgroundNoise(background, Layers.origin(tiles));
        double noise = origin.sigma(1);
        PixelStretch pixels = new PixelStretch(PixelCurve.of(tiles, sky, noise), sky, noise);
        if (pixels.enough()) {
            return Optional.of(pixels.of(tiles, CellChoice.peaks(tiles, Block.SIDE)));
        }
        return byKernel(sky, noise, origin.leans());
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

    private Optional<Stretching> byKernel(double sky, double noise, boolean leans) {
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
        Optional<SkySlope> slope = leans ? Optional.empty() : SkySlope.of(background, sky, noise, LITTLE * shown);
        if (!kernels.isEmpty() && kernels.get(0).misfit() < GOOD) {
            Stretching found =
                    Stretching.of(over(kernels.get(0).curve()), !kernels.get(0).before());
            return Optional.of(held(List.of(found), slope, sky));
        }
        return byCells(sky, slope, kernels);
    }

    private Transfer over(Curve curve) {
        return Transfer.over(tiles, curve, Bends.NONE, false);
    }

    private Optional<Stretching> byCells(double sky, Optional<SkySlope> slope, List<KernelStretch.Found> kernels) {
        Optional<CellStretch> plain = CellStretch.plain(tiles);
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        CellStretch light = CellStretch.light(tiles).orElse(plain.get());
        int reach = MedianOf.reach(noiseRatio(plain.get().transfer()));
        Optional<CellStretch> median = reach == 0 ? Optional.empty() : CellStretch.median(tiles, reach);
        List<Stretching> all = new ArrayList<>();
        if (median.isPresent() && median.get().starMisfit() < MUCH_BETTER * light.starMisfit()) {
            all.add(Stretching.sure(median.get().transfer()));
        } else {
            all.add(Stretching.sure(light.transfer()));
            kernels.stream()
                    .filter(k -> slope.isPresent()
                            && k.misfit() > NOISY
                            && k.misfit() < LIKE_SKY * slope.get().misfit())
                    .forEach(k -> all.add(Stretching.sure(over(k.curve()))));
        }
        return Optional.of(held(all, slope, sky));
    }

    /** The first whose slope about the sky is as the sky shows it, else the first with what the sky shows. */
    private static Stretching held(List<Stretching> all, Optional<SkySlope> asked, double sky) {
        Stretching first = all.get(0);
        if (asked.isEmpty() || !asked.get().corrects(asked.get().over(first.transfer(), sky))) {
            return asked.filter(SkySlope::bent)
                    .map(slope -> first.asShown(slope.over(first.transfer(), sky), true)
                            .withoutShapes(UNEVEN))
                    .orElse(first);
        }
        SkySlope slope = asked.get();
        return all.stream()
                .filter(each -> slope.agrees(slope.over(each.transfer(), sky)))
                .findFirst()
                .map(each -> slope.bent() ? each.asShown(slope.over(each.transfer(), sky), true) : each)
                .orElseGet(() -> first.asShown(slope.over(first.transfer(), sky), slope.bent())
                        .withoutShapes(UNEVEN));
    }

    private double noiseRatio(Transfer transfer) {
        return new BackgroundNoise(background, Layers.picture(tiles)).sigma(1)
                / new BackgroundNoise(background, Layers.forward(tiles, transfer)).sigma(1);
    }
}
