package noctuary.advice;

import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.say;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * When to refocus a rig, from its own nights.
 *
 * @param nights with temperatures and four frames or more, oldest first
 * @param degrees to wait at most: the smallest that a night with clear growth gave; absent without such a night
 * @param minutes that this takes at the rate of that night
 * @param stepsPerDegree of the focuser from night to night; absent below six nights
 * @param besides sentences on cooling, and on widths from night to night
 */
public record RefocusRule(
        List<FocusNight> nights,
        OptionalDouble degrees,
        OptionalDouble minutes,
        OptionalDouble stepsPerDegree,
        List<String> besides) {
    public RefocusRule {
        nights = List.copyOf(nights);
        besides = List.copyOf(besides);
    }

    static RefocusRule of(List<FocusNight> nights, OptionalDouble stepsPerDegree, List<String> besides) {
        var worst = nights.stream()
                .filter(n -> n.degreesFor10Percent().isPresent())
                .min(Comparator.comparingDouble(n -> n.degreesFor10Percent().getAsDouble()));
        OptionalDouble degrees = worst.map(FocusNight::degreesFor10Percent).orElseGet(OptionalDouble::empty);
        OptionalDouble minutes = worst.filter(n -> n.degreesPerHour() != 0)
                .map(n -> OptionalDouble.of(60 * n.degreesFor10Percent().getAsDouble() / Math.abs(n.degreesPerHour())))
                .orElseGet(OptionalDouble::empty);
        return new RefocusRule(nights, degrees, minutes, stepsPerDegree, besides);
    }

    public String sentence() {
        if (nights.isEmpty()) {
            return "No rule yet: it takes a night of four frames or more with temperatures in their headers.";
        }
        String steps = stepsPerDegree.isPresent()
                ? say(
                        " From night to night the focuser stood %s steps further a degree.",
                        fixed(stepsPerDegree.getAsDouble(), 1))
                : "";
        if (degrees.isEmpty()) {
            return say(
                            "No rule yet: on %s with temperatures the stars did not clearly widen, over %s degrees at most.",
                            Words.count(nights.size(), "night", "nights"), fixed(widest(), 1))
                    + steps;
        }
        long told =
                nights.stream().filter(n -> n.degreesFor10Percent().isPresent()).count();
        String sure = told == 1 ? " One night says so; watch a second one." : say(" %s nights say so.", told);
        String time = minutes.isPresent()
                ? say(", about %s at that night’s rate", Words.time(60 * minutes.getAsDouble()))
                : "";
        return say(
                        "Refocus after every %s degrees%s: from there on stars are a tenth wider.",
                        fixed(degrees.getAsDouble(), 1), time)
                + sure
                + steps;
    }

    private double widest() {
        return nights.stream().mapToDouble(n -> Math.abs(n.degrees())).max().orElse(0);
    }
}
