package noctuary.effect;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import noctuary.stars.Star;

/** What became of stars: their shapes, their light, what is around them; as far as the stretch allows it. */
record StarReport(SameStars same, Optional<StarFates> fates, Rings rings) {
    /** Dark rings of this depth leave no profile to fit a width to, percent of a star's height. */
    private static final double DEEP_PERCENT = 4;

    static StarReport of(
            List<Star> stars,
            Laying laying,
            Layers layers,
            List<Block> blocks,
            double fwhm,
            Stretching found,
            Function<Transfer, List<Star>> seen) {
        if (!found.noLight().isEmpty()) {
            Amount absent = Amount.absent(found.noLight());
            return new StarReport(SameStars.absent(found.noLight()), Optional.empty(), new Rings(absent, absent));
        }
        List<Star> after = seen.apply(found.transfer());
        Rings rings = Rings.of(layers, stars, laying, fwhm);
        StarFates fates = new FateCount(layers, blocks, fwhm).count(stars, after, laying);
        return new StarReport(shapes(stars, after, laying, found, rings), Optional.of(fates), rings);
    }

    private static SameStars shapes(
            List<Star> stars, List<Star> after, Laying laying, Stretching found, Rings rings) {
        if (!found.noShapes().isEmpty()) {
            return SameStars.absent(found.noShapes());
        }
        return rings.darkPercent().value().orElse(0) > DEEP_PERCENT
                ? SameStars.absent("dark rings around the stars leave no profile to fit a width to")
                : SameStars.of(stars, after, laying);
    }
}
