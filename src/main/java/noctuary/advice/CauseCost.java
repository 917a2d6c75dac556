package noctuary.advice;

import static noctuary.advice.Words.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import noctuary.entry.Entry;

/**
 * What a cause that can be mended has cost, and what it would have given in exposure.
 *
 * @param usedSeconds exposure of the same entries
 */
public record CauseCost(String cause, int times, double minutes, double usedSeconds) {
    static List<CauseCost> of(List<Spent> spent) {
        Map<String, CauseCost> costs = new TreeMap<>();
        for (Spent night : spent) {
            for (Entry.Lost lost : night.lost()) {
                if (!Cause.isWeather(lost.cause())) {
                    CauseCost one = new CauseCost(lost.cause(), 1, lost.minutes(), night.seconds());
                    costs.merge(lost.cause(), one, CauseCost::plus);
                }
            }
        }
        List<CauseCost> sorted = new ArrayList<>(costs.values());
        sorted.sort(Comparator.comparingDouble(CauseCost::minutes).reversed());
        return sorted;
    }

    private CauseCost plus(CauseCost other) {
        return new CauseCost(cause, times + other.times, minutes + other.minutes, usedSeconds + other.usedSeconds);
    }

    /** At the most, because time between exposures is never all exposure. */
    public String sentence() {
        String gain = usedSeconds > 0 ? gain(1 + 60 * minutes / usedSeconds) : "";
        return say("Mended, it would have given up to %s of exposure%s.", Words.time(60 * minutes), gain);
    }

    private static String gain(double ratio) {
        String times =
                ratio > 2 ? say("%s times as much", Words.fixed(ratio, 1)) : say("%s more", Words.percent(ratio - 1));
        return say(": %s on those nights, %s mag deeper", times, Words.fixed(EqualDepth.magnitudesForTime(ratio), 2));
    }
}
