package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import noctuary.stars.Star;
import noctuary.stats.Robust;

/** Puts the numbers of a comparison together, each with the reason where it cannot be had. */
final class Report {
    private static final int[] SIZES = {1, 2, 4, 8};
    private static final int FEWEST_BLOCKS = 8;
    private static final double MOST_CUT_PERCENT = 10;
    private static final double MEDIAN_CUT_PERCENT = 40;
    private static final String NO_BACKGROUND = "too little of the field is free of stars and light";

    private final Side from;
    private final Laying laying;
    private final List<Tile> tiles;
    private final double fwhm;
    private final List<boolean[]> masks;
    private final List<Block> blocks;
    private final DarkSky dark;

    Report(Side from, Laying laying, List<Tile> tiles, double fwhm) {
        this.from = from;
        this.laying = laying;
        this.tiles = tiles;
        this.fwhm = fwhm;
        this.masks = tiles.stream()
                .map(tile -> StarMask.of(tile, from.stars(), laying, fwhm))
                .toList();
        this.blocks = Blocks.background(tiles, masks);
        this.dark = blocks.size() >= FEWEST_BLOCKS ? DarkSky.of(blocks) : new DarkSky(0, 0, List.of());
    }

    /** A picture that could not be laid on its origin: only what it shows by itself. */
    static Effect unlaid(Ends ends, boolean lossy, String why) {
        return empty(Optional.empty(), ends, Amount.absent(why), List.of(), lossy, why);
    }

    private static Effect empty(
            Optional<Effect.Laid> laid, Ends ends, Amount cut, List<Double> cast, boolean lossy, String why) {
        Amount absent = Amount.absent(why);
        return new Effect(
                laid,
                Optional.empty(),
                scales(size -> absent),
                absent,
                absent,
                new Effect.Neighbours(absent, absent),
                Optional.empty(),
                absent,
                0,
                absent,
                absent,
                absent,
                absent,
                absent,
                ends.blackPercent(),
                ends.whitePercent(),
                cut,
                cast,
                lossy,
                why);
    }

    /** @param seen finds the stars of the picture once its stretch is known */
    Effect of(Ends ends, boolean lossy, Function<Transfer, List<Star>> seen) {
        boolean sky = blocks.size() >= FEWEST_BLOCKS;
        Amount cut = sky ? Amount.of(dark.cutPercent()) : Amount.absent(NO_BACKGROUND);
        Optional<Transfer> transfer = new StretchFinder(tiles, blocks).find();
        if (transfer.isEmpty()) {
            return empty(
                    Optional.of(laid()),
                    ends,
                    cut,
                    dark.castPercent(),
                    lossy,
                    "no single stretch leads from one picture to the other, as after a gradient was taken off or local"
                            + " contrast changed");
        }
        return full(ends, lossy, cut, transfer.get(), seen.apply(transfer.get()));
    }

    private Effect full(Ends ends, boolean lossy, Amount cut, Transfer transfer, List<Star> seen) {
        Layers layers = Layers.of(tiles, transfer);
        String blind = blind();
        BackgroundNoise before = blind.isEmpty() ? new BackgroundNoise(blocks, layers.stretched()) : null;
        BackgroundNoise after = blind.isEmpty() ? new BackgroundNoise(blocks, layers.shown()) : null;
        SameStars same = SameStars.of(from.stars(), seen, laying);
        Rings rings = Rings.of(layers, from.stars(), laying, fwhm);
        StarFates fates = new FateCount(layers, blocks, fwhm).count(from.stars(), seen, laying);
        return new Effect(
                Optional.of(laid()),
                Optional.of(stretch(transfer)),
                scales(size -> noise(size, layers, before, after, blind)),
                blind.isEmpty() ? Amount.of(before.blotch()) : Amount.absent(blind),
                blind.isEmpty() ? Amount.of(after.blotch()) : Amount.absent(blind),
                neighbours(before, after, blind),
                Optional.of(fates),
                same.fwhmRatio(),
                same.fwhmRatio().value().isPresent() ? same.fwhmRatioError() : 0,
                same.ellipticityChange(),
                blind.isEmpty() ? Detail.kept(layers, masks, blocks) : Amount.absent(blind),
                similarity(layers),
                rings.darkPercent(),
                rings.haloPercent(),
                ends.blackPercent(),
                ends.whitePercent(),
                cut,
                dark.castPercent(),
                lossy,
                "");
    }

    /** Why noise cannot be told; empty when it can. */
    private String blind() {
        if (blocks.size() < FEWEST_BLOCKS) {
            return NO_BACKGROUND;
        }
        return dark.mainCutPercent() > MOST_CUT_PERCENT ? "too much of the background is cut to black to tell" : "";
    }

    private Effect.Laid laid() {
        var a = laying.alignment();
        return new Effect.Laid(
                a.matched(),
                a.rmsPx(),
                a.scale(),
                a.rotationDeg(),
                a.mirrored(),
                !laying.way().whole());
    }

    private Effect.Stretch stretch(Transfer transfer) {
        double sky = blocks.isEmpty()
                ? transfer.curve().middle()
                : Robust.median(blocks.stream().mapToDouble(Block::level).toArray());
        Amount strength = transfer.bent()
                ? Amount.absent("the curve is no asinh curve")
                : Amount.known(transfer.curve().strength(), "the curve has no end");
        return new Effect.Stretch(
                strength, transfer.forward(sky), transfer.curve().slope(sky));
    }

    private static List<Effect.Scale> scales(IntFunction<Amount> of) {
        List<Effect.Scale> scales = new ArrayList<>();
        for (int size : SIZES) {
            scales.add(new Effect.Scale(size, of.apply(size)));
        }
        return scales;
    }

    /** After resampling only means over many pixels compare: interpolation itself takes noise from small ones. */
    private Amount noise(int size, Layers layers, BackgroundNoise before, BackgroundNoise after, String blind) {
        if (!blind.isEmpty()) {
            return size == 1 ? upperNoise(layers, blind) : Amount.absent(blind);
        }
        boolean fair = laying.way().whole() || size == SIZES[SIZES.length - 1];
        return fair
                ? Amount.known(after.sigma(size) / before.sigma(size), "the origin has no noise")
                : Amount.absent("the picture was resized or turned, which changes fine noise by itself");
    }

    /** Under a cut that leaves the median above black: the upper half of the noise still shows. */
    private Amount upperNoise(Layers layers, String blind) {
        boolean shows =
                blocks.size() >= FEWEST_BLOCKS && laying.way().whole() && dark.mainCutPercent() < MEDIAN_CUT_PERCENT;
        return shows
                ? Amount.known(
                        new BackgroundNoise(blocks, layers.shown()).upperSigma()
                                / new BackgroundNoise(blocks, layers.endless()).upperSigma(),
                        blind)
                : Amount.absent(blind);
    }

    private static Effect.Neighbours neighbours(BackgroundNoise before, BackgroundNoise after, String blind) {
        if (!blind.isEmpty()) {
            return new Effect.Neighbours(Amount.absent(blind), Amount.absent(blind));
        }
        String flat = "the background has no noise";
        return new Effect.Neighbours(
                Amount.known(before.neighbourCorrelation(), flat), Amount.known(after.neighbourCorrelation(), flat));
    }

    private static Amount similarity(Layers layers) {
        double sum = 0;
        double area = 0;
        for (Tile tile : layers.tiles()) {
            double mean =
                    Ssim.mean(layers.stretched().get(tile), layers.shown().get(tile), tile.width(), tile.height(), 1);
            if (!Double.isNaN(mean)) {
                sum += mean * tile.size();
                area += tile.size();
            }
        }
        return Amount.known(sum / area, "the pictures are too small");
    }
}
