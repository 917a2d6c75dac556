package noctuary.effect;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.stars.Star;

/** What became of stars: their shapes, their light, what is around them; as far as the stretch allows it. */
record StarReport(SameStars same, Optional<StarFates> fates, double halved, Rings rings, String whyNoFates) {
    /** Share of the stars near half of their light from which lost and kept mix. */
    private static final double MANY_HALVED = 0.5;

    /** The same where smoothing did the same to all of them, and neighbours and noise decide. */
    private static final double MANY_SMEARED = 0.15;

    private static final String HALVED =
            "many stars kept about half of their light, so that kept and lost cannot be told apart in this field";

    private static final String NIBBLED = "sharpened noise is cut to black, and light of faint stars with it";

    /** Dark rings of this depth leave no profile to fit a width to, percent of a star's height. */
    private static final double DEEP_PERCENT = 4;

    /** The same where the step came after the stretch, which hides what it did to the light below, and of sharp stars. */
    private static final double DEEP_LESS_PERCENT = 2;

    /** Width in pixels below which a ring lies among the few pixels that make a star. */
    private static final double SHARP_PX = 2.5;

    /** @param rough whether noise was raised so much that rings are likely */
    static StarReport of(
            List<Star> stars,
            Laying laying,
            Layers layers,
            Ground ground,
            double fwhm,
            Stretching found,
            boolean rough,
            List<Star> after,
            SameStars same) {
        if (!found.noLight().isEmpty()) {
            Amount absent = Amount.absent(found.noLight());
            return new StarReport(
                    SameStars.absent(found.noLight()), Optional.empty(), 0, new Rings(absent, absent), found.noLight());
        }
        Rings rings = Rings.of(layers, stars, laying, fwhm);
        FateCount count = new FateCount(layers, ground, fwhm);
        StarFates fates = count.count(stars, after, laying);
        return new StarReport(
                shapes(same, found, rings, deep(found, fwhm), rough), Optional.of(fates), count.halved(), rings, "");
    }

    /**
     * Without what cannot be told in such a field.
     *
     * @param stretched whether the origin is a picture and not linear
     * @param half change of the width at half height, by {@link HalfHeight}; asked where stretched
     * @param smeared whether light of the stars lies far out of where it was
     * @param nibbled whether some of sharpened noise is cut to black
     */
    StarReport trusted(Crowding crowding, boolean stretched, OptionalDouble half, boolean smeared, boolean nibbled) {
        SameStars sure = same.alike().confirmedBy(half);
        SameStars shapes = stretched ? crowding.trustedStretched(sure) : crowding.trusted(sure);
        if (fates.isEmpty() || !nibbled && halved <= (smeared ? MANY_SMEARED : MANY_HALVED)) {
            return new StarReport(shapes, fates, halved, rings, whyNoFates);
        }
        return new StarReport(shapes, Optional.empty(), halved, rings, nibbled ? NIBBLED : HALVED);
    }

    private static double deep(Stretching found, double fwhm) {
        return found.stepAfter() || fwhm < SHARP_PX ? DEEP_LESS_PERCENT : DEEP_PERCENT;
    }

    private static SameStars shapes(SameStars same, Stretching found, Rings rings, double deep, boolean rough) {
        if (!found.noShapes().isEmpty()) {
            return SameStars.absent(found.noShapes());
        }
        return rings.darkPercent().value().orElse(rough ? Double.POSITIVE_INFINITY : 0) > deep
                ? SameStars.absent("dark rings around the stars leave no profile to fit a width to")
                : same;
    }
}
