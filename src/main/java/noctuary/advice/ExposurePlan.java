package noctuary.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much exposure an entry still wants.
 *
 * @param totalSeconds that it has
 * @param sub of one exposure, where measured
 * @param growth whether the noise falls with the root of the time; absent without frames and stack
 * @param deeper hours for chosen gains
 * @param elsewhere the same depth under other skies and with other rigs, those that take least, quickest first
 * @param places all rigs and skies that {@code elsewhere} was chosen from
 */
public record ExposurePlan(
        String slug,
        double totalSeconds,
        Optional<Sub> sub,
        Optional<NoiseGrowth> growth,
        Optional<NoiseFall> fall,
        List<Deeper> deeper,
        List<Elsewhere> elsewhere,
        int places) {
    public ExposurePlan {
        deeper = List.copyOf(deeper);
        elsewhere = List.copyOf(elsewhere);
    }

    /**
     * @param seconds as taken
     * @param shortestSeconds that keeps the part of reading below 5 %
     * @param growth by which reading raises the noise now, a share
     * @param rate electrons a second a pixel from the sky, as its noise tells
     * @param rateError half the width of what that may be
     * @param levelRate the same by the level above dark frames; absent without any
     * @param starFree whether stars too faint to be found are out of it
     */
    public record Sub(
            double seconds,
            double shortestSeconds,
            double growth,
            double rate,
            OptionalDouble rateError,
            OptionalDouble levelRate,
            boolean starFree,
            double readNoiseE) {
        public String sentence() {
            boolean enough = seconds >= shortestSeconds;
            return Words.say(
                    "Exposures of %s; reading the sensor raises their noise by %s. %s",
                    Words.time(seconds),
                    Words.percent(growth),
                    enough
                            ? Words.say("From %s on that is below 5 %%: long enough.", Words.time(shortestSeconds))
                            : Words.say("Take %s or more to keep that below 5 %%.", Words.time(shortestSeconds)));
        }

        public String evidence() {
            int decimals = Math.max(0, 2 - (int) Math.floor(Math.log10(rate)));
            String error = rateError.isPresent() ? " ± " + Words.fixed(rateError.getAsDouble(), decimals) : "";
            String level = levelRate.isPresent()
                    ? Words.say("; by its level above the dark frames %s", Words.amount(levelRate.getAsDouble(), "e"))
                    : "";
            return Words.say(
                    "read noise %s; %s%s e a second a pixel from the sky by its noise%s%s",
                    Words.amount(readNoiseE, "e"),
                    Words.fixed(rate, decimals),
                    error,
                    starFree ? ", stars left out" : ", in which stars too faint to be found count",
                    level);
        }
    }

    /** @param totalSeconds wanted in all; absent where the floor of the noise keeps it out of reach */
    public record Deeper(double magnitudes, OptionalDouble totalSeconds) {}

    /**
     * @param seconds for the same depth
     * @param assuming what the number rests on
     */
    public record Elsewhere(String rig, String site, double seconds, String assuming) {}
}
