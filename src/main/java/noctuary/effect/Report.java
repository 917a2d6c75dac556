package noctuary.effect;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.stars.Star;
import noctuary.stats.Robust;

/** Puts the numbers of a comparison together, each with the reason where it cannot be had. */
final class Report {
    /** Width in quadrature, as a share of the stars' width, below which none of their light was smeared out of the masks. */
    private static final double LITTLE = 0.3;
    /** The same above which it lies far out. */
    private static final double MUCH = 1.2;

    /** Noise raised so much makes rings likely where too few bright stars are left to show them. */
    private static final double ROUGH = 2;

    private final Side from;
    private final Laying laying;
    private final List<Tile> tiles;
    private final double fwhm;
    private final boolean stretched;
    private final Crowding crowding;
    private final Ground ground;
    private final DarkSky dark;

    /** @param stretched whether the origin is a picture and not linear */
    Report(Side from, Laying laying, List<Tile> tiles, double fwhm, boolean stretched) {
        this.from = from;
        this.stretched = stretched;
        this.crowding = Crowding.of(from);
        this.laying = laying;
        this.tiles = tiles;
        this.fwhm = fwhm;
        this.ground = Ground.of(tiles, from.stars(), laying, fwhm, 0);
        this.dark = ground.dark();
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
                NoiseReport.scales(size -> absent),
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
        Amount cut = ground.enough() ? Amount.of(dark.cutPercent()) : Amount.absent(NoiseReport.NO_BACKGROUND);
        return new StretchFinder(tiles, ground.blocks())
                .find()
                .map(found -> full(
                        ends, lossy, cut, found, found.noLight().isEmpty() ? seen.apply(found.transfer()) : List.of()))
                .orElseGet(() -> empty(
                        Optional.of(laid()),
                        ends,
                        cut,
                        dark.castPercent(),
                        lossy,
                        "no single stretch leads from one picture to the other, as after a gradient was taken off or"
                                + " local contrast changed"));
    }

    private Effect full(Ends ends, boolean lossy, Amount cut, Stretching found, List<Star> seen) {
        Layers layers = Layers.of(tiles, found.transfer());
        SameStars same = SameStars.of(from.stars(), seen, laying);
        Ground clear = clear(same.smear(fwhm));
        NoiseReport noise = new NoiseReport(
                clear, drowned(clear), layers, found, dark, laying.way().whole(), crowding.close());
        double ratio = noise.scales().get(0).ratio().value().orElse(1);
        boolean rough = noise.nibbled() || ratio > ROUGH;
        StarReport stars = StarReport.of(from.stars(), laying, layers, clear, fwhm, found, rough, seen, same)
                .trusted(crowding, stretched, half(layers), clear.smear() >= MUCH * fwhm, noise.nibbled());
        return new Effect(
                Optional.of(laid()),
                Optional.of(stretch(found)),
                noise.scales(),
                noise.blotchBefore(),
                noise.blotchAfter(),
                noise.neighbours(),
                stars.fates(),
                stars.same().fwhmRatio(),
                stars.same().fwhmRatio().value().isPresent() ? stars.same().fwhmRatioError() : 0,
                stars.same().ellipticityChange(),
                noise.whyBlind().isEmpty() ? Detail.kept(layers, ground) : Amount.absent(noise.whyBlind()),
                found.noLight().isEmpty() ? similarity(layers) : Amount.absent(found.noLight()),
                stars.rings().darkPercent(),
                stars.rings().haloPercent(),
                ends.blackPercent(),
                ends.whitePercent(),
                found.skyKnown() && dark.unsettled() ? Amount.absent(DarkSky.UNSETTLED) : cut,
                dark.castPercent(),
                lossy,
                stars.whyNoFates());
    }

    private OptionalDouble half(Layers layers) {
        return stretched ? HalfHeight.ratio(layers, from.stars(), laying, fwhm) : OptionalDouble.empty();
    }

    /** Why what is left of the noise cannot be told from light that lies about; empty when it can. */
    private String drowned(Ground clear) {
        if (clear.smear() < MUCH * fwhm || clear.blocks().isEmpty()) {
            return "";
        }
        if (crowding.close()) {
            return Crowding.SMEARED;
        }
        return ground.empty() ? "" : NoiseReport.FAINT_LIGHT;
    }

    /** Without the light that a step smeared out of the stars, which would pass for noise. */
    private Ground clear(double smear) {
        return smear < LITTLE * fwhm ? ground : Ground.of(tiles, from.stars(), laying, fwhm, smear);
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

    private Effect.Stretch stretch(Stretching found) {
        Transfer transfer = found.transfer();
        double sky = ground.blocks().isEmpty()
                ? transfer.curve().middle()
                : Robust.median(
                        ground.blocks().stream().mapToDouble(Block::level).toArray());
        Amount strength = transfer.bent()
                ? Amount.absent("the curve is no asinh curve")
                : Amount.known(transfer.curve().strength(), "the curve has no end");
        return new Effect.Stretch(
                found.noShapes().isEmpty() ? strength : Amount.absent(found.noShapes()),
                transfer.forward(sky),
                found.skyGain() * transfer.curve().slope(sky));
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
