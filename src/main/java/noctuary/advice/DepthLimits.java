package noctuary.advice;

import static noctuary.advice.SharpnessLimits.limit;
import static noctuary.advice.Words.amount;
import static noctuary.advice.Words.percent;
import static noctuary.advice.Words.say;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What could make an entry deeper, whether it is much or not. */
final class DepthLimits {
    private static final String SAME = "with this rig and filter";

    private final Depth d;

    private DepthLimits(Depth d) {
        this.d = d;
    }

    /**
     * @param sky electrons a second a square arcsecond, of other nights with the same rig and filter
     * @param exposure seconds, of other entries with the same rig and filters
     */
    static List<Limit> of(Depth depth, Usual sky, Usual exposure) {
        DepthLimits limits = new DepthLimits(depth);
        return Stream.of(limits.readNoise(), limits.dark(), limits.sky(sky), limits.exposure(exposure))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Limit> readNoise() {
        OptionalDouble rate = d.backgroundRate();
        if (rate.isEmpty()) {
            return Optional.empty();
        }
        double loss = Limit.lossWithout(d.noiseE().getAsDouble(), d.readNoiseE().getAsDouble());
        double wanted = SubExposure.shortestSeconds(
                        d.readNoiseE().getAsDouble(), rate.getAsDouble(), SubExposure.USUAL_GROWTH)
                .orElseThrow();
        String text = say(
                "The single exposures are short: reading the sensor makes up %s of the noise. From %s on it would be "
                        + "below 5 %%.",
                percent(loss), Words.time(wanted));
        String evidence = say(
                "read noise %s, light %s a second a pixel as its noise tells, exposures of %s",
                amount(d.readNoiseE().getAsDouble(), "e"),
                amount(rate.getAsDouble(), "e"),
                Words.time(d.subSeconds().getAsDouble()));
        String settle = "Take two frames of twice the exposure: their noise must grow by less than half.";
        return Optional.of(limit("read-noise", loss, text, settle, evidence));
    }

    private Optional<Limit> dark() {
        if (d.darkE().isEmpty()) {
            return Optional.empty();
        }
        double loss =
                Limit.lossWithout(d.noiseE().getAsDouble(), Math.sqrt(d.darkE().getAsDouble()));
        String text = say("Dark current makes up %s of the noise: cool the sensor further.", percent(loss));
        String evidence = say(
                "%s of dark current in an exposure, of %s squared noise in all",
                amount(d.darkE().getAsDouble(), "e"),
                amount(d.noiseE().getAsDouble() * d.noiseE().getAsDouble(), "e²"));
        return Optional.of(
                limit("dark", loss, text, "Take five dark frames 5 °C colder and compare their noise.", evidence));
    }

    private Optional<Limit> sky(Usual usual) {
        OptionalDouble rate = d.skyRate();
        if (rate.isEmpty() || !usual.unusuallyHigh(rate.getAsDouble())) {
            return Optional.empty();
        }
        double ratio = usual.median() / rate.getAsDouble();
        double saved = Math.sqrt(d.lightE().getAsDouble() * (1 - ratio));
        double loss = Limit.lossWithout(d.noiseE().getAsDouble(), saved);
        String text = say(
                "The sky was brighter than usual: under your usual sky the noise would have been %s less.",
                percent(loss));
        String evidence = say(
                "%s a second a square arcsecond, against a median of %s on %s other nights %s",
                amount(rate.getAsDouble(), "e"), amount(usual.median(), "e"), usual.nights(), SAME);
        return Optional.of(limit(
                "sky",
                loss,
                text,
                "Look at where the Moon stood, at haze and at new lamps; then take one frame of the same field on a "
                        + "moonless night.",
                evidence));
    }

    private Optional<Limit> exposure(Usual usual) {
        OptionalDouble seconds = d.totalSeconds();
        if (seconds.isEmpty() || !usual.unusuallyLow(seconds.getAsDouble())) {
            return Optional.empty();
        }
        double loss = 1 - Math.sqrt(seconds.getAsDouble() / usual.median());
        String text = say("There is little exposure: with as much as usual the noise would be %s less.", percent(loss));
        String evidence = say(
                "%s, against a median of %s in %s other entries %s; noise falls with the root of the time",
                Words.time(seconds.getAsDouble()), Words.time(usual.median()), usual.nights(), SAME);
        return Optional.of(limit("exposure", loss, text, "Add another night to the same target.", evidence));
    }
}
