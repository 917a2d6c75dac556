package noctuary.effect;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.stars.Star;

/** What became of stars: their shapes, their light, what is around them; as far as the stretch allows it. */
record StarReport(SameStars same, Optional<StarFates> fates, double halved, Rings rings, String whyNoFates) {
    /** Share of the stars near half of their light from which lost and kept mix. */
    private static final double MANY_HALVED = 0.15;

    /** Dark rings of this depth leave no profile to fit a width to, percent of a star's height. */
    private static final double DEEP_PERCENT = 4;

    /** The same where the step came after the stretch, which hides what it did to the light below. */
    private static final double DEEP_AFTER_PERCENT = 2;

    /** Noise raised so much makes rings likely where too few bright stars are left to show them. */
    private static final double ROUGH = 2;

    static StarReport of(
            List<Star> stars,
            Laying laying,
            Layers layers,
            Ground ground,
            double fwhm,
            Stretching found,
            double noiseRatio,
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
                shapes(same, found, rings, noiseRatio > ROUGH), Optional.of(fates), count.halved(), rings, "");
    }

    /**
     * Without what cannot be told in such a field.
     *
     * @param stretched whether the origin is a picture and not linear
     * @param half change of the width at half height, by {@link HalfHeight}; asked where stretched
     * @param smeared whether light of the stars lies far out of where it was
     * @param empty whether some of the sky is empty of light
     */
    StarReport trusted(Crowding crowding, boolean stretched, OptionalDouble half, boolean empty, boolean smeared) {
        SameStars shapes =
                stretched ? crowding.trustedStretched(same.alike().confirmedBy(half)) : crowding.trusted(same);
        boolean mixed = smeared && fates.isPresent() && halved > MANY_HALVED && (crowding.close() || !empty);
        return new StarReport(
                shapes, mixed ? Optional.empty() : fates, halved, rings, mixed ? Crowding.HALVED : whyNoFates);
    }

    private static SameStars shapes(SameStars same, Stretching found, Rings rings, boolean rough) {
        if (!found.noShapes().isEmpty()) {
            return SameStars.absent(found.noShapes());
        }
        return rings.darkPercent().value().orElse(rough ? Double.POSITIVE_INFINITY : 0)
                        > (found.stepAfter() ? DEEP_AFTER_PERCENT : DEEP_PERCENT)
                ? SameStars.absent("dark rings around the stars leave no profile to fit a width to")
                : same;
    }
}
