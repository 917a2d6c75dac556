package noctuary.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
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

    /**
     * Exposure with the cause mended over the exposure there was, at the most, because time between exposures is never
     * all exposure; absent when there was none.
     */
    public OptionalDouble ratio() {
        return usedSeconds > 0 ? OptionalDouble.of(1 + 60 * minutes / usedSeconds) : OptionalDouble.empty();
    }

    /** By so much deeper, at the most. */
    public OptionalDouble magnitudes() {
        return ratio().isPresent()
                ? OptionalDouble.of(EqualDepth.magnitudesForTime(ratio().getAsDouble()))
                : OptionalDouble.empty();
    }
}
