package noctuary.effect;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What lies between a picture and the one it came from, in numbers. Ratios are picture over origin; both stand under the
 * same stretch, which is estimated.
 *
 * @param laid how the picture lies on its origin; absent when the stars do not agree, and then most is absent
 * @param stretch absent when no single curve leads from one to the other
 * @param noise at 1, 2, 4 and 8 px
 * @param neighbours correlation of the background noise of neighbours, before and after
 * @param fates absent without a stretch, and where only the sky shows it
 * @param fwhmRatioError standard error of {@code fwhmRatio}; 0 where absent
 * @param detailKept share of the power of structure of 4 to 8 px in bright parts that is left
 * @param backgroundCutPercent share of the true background that is black
 * @param castPercent of the background: red, green, blue against their mean; empty for grey
 * @param whyNot reason why {@code laid}, {@code stretch} or {@code fates} is absent; empty when all are there
 */
public record Effect(
        Optional<Laid> laid,
        Optional<Stretch> stretch,
        List<Scale> noise,
        Amount blotchBefore,
        Amount blotchAfter,
        Neighbours neighbours,
        Optional<StarFates> fates,
        Amount fwhmRatio,
        double fwhmRatioError,
        Amount ellipticityChange,
        Amount detailKept,
        Amount similarity,
        Amount darkRingPercent,
        Amount haloPercent,
        double clippedBlackPercent,
        double clippedWhitePercent,
        Amount backgroundCutPercent,
        List<Double> castPercent,
        boolean lossy,
        String whyNot) {
    public Effect {
        noise = List.copyOf(noise);
        castPercent = List.copyOf(castPercent);
    }

    /** @param resampled whether the origin had to be resampled onto the picture's grid */
    public record Laid(
            int matched, double rmsPx, double scale, double rotationDeg, boolean mirrored, boolean resampled) {}

    /**
     * @param strength of a normalised asinh curve; absent when the curve is none
     * @param background level that the background became, share of white
     * @param slope change of the picture, as a share of white, for one unit of the origin, at the background
     */
    public record Stretch(Amount strength, double background, double slope) {}

    /** Noise of means over squares of {@code sizePx}. */
    public record Scale(int sizePx, Amount ratio) {}

    public record Neighbours(Amount before, Amount after) {}

    /** The ratio at one size. */
    public Amount noiseRatio(int sizePx) {
        return noise.stream()
                .filter(scale -> scale.sizePx() == sizePx)
                .map(Scale::ratio)
                .findFirst()
                .orElse(Amount.absent(whyNot));
    }

    /**
     * Compares. The pixels are asked for one picture after the other, so that both need not be in memory at once.
     *
     * @param from the origin, linear or not
     */
    public static Effect measure(
            Side from, Supplier<Pixels> originPixels, Side picture, Supplier<Pixels> picturePixels) {
        return new Comparison(from, picture).run(originPixels, picturePixels);
    }
}
