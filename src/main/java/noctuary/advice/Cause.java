package noctuary.advice;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** What lessons, losses and findings call the same trouble. */
final class Cause {
    /** Ids of observations and findings to the words that lessons use for them. */
    private static final Map<String, Set<String>> WORDS = Map.ofEntries(
            Map.entry("focus-drift", Set.of("focus", "refocus", "temperature", "cool-down")),
            Map.entry("limit-focus", Set.of("focus", "refocus", "temperature", "cool-down")),
            Map.entry("cloud", Set.of("cloud", "clouds", "haze")),
            Map.entry("dew", Set.of("dew", "heater")),
            Map.entry("obstruction", Set.of("obstruction", "tree", "roof", "house", "wall")),
            Map.entry("trailing", Set.of("guiding", "tracking", "trailing")),
            Map.entry("limit-guiding", Set.of("guiding", "tracking", "trailing")),
            Map.entry("limit-spacing", Set.of("spacing", "corners", "back focus", "spacer")),
            Map.entry("limit-tilt", Set.of("tilt", "corners")),
            Map.entry("limit-streaks", Set.of("dither", "dithering", "streaks")),
            Map.entry("limit-banding", Set.of("banding", "bands")),
            Map.entry("limit-clipping", Set.of("clipping", "offset", "saturation")),
            Map.entry("limit-read-noise", Set.of("read noise", "sub-exposure")),
            Map.entry("limit-exposure", Set.of("exposure", "depth")),
            Map.entry("limit-sky", Set.of("sky", "moon", "lamps")),
            Map.entry("limit-altitude", Set.of("altitude", "low")));

    /** Losses that leave no clear sky to use. */
    private static final List<String> WEATHER =
            List.of("cloud", "clouds", "rain", "fog", "mist", "haze", "snow", "overcast", "weather");

    private Cause() {}

    /** What lessons call that which an observation or finding shows. */
    static Set<String> words(String findingId) {
        return WORDS.getOrDefault(findingId, Set.of());
    }

    static boolean isWeather(String cause) {
        return WEATHER.contains(plain(cause));
    }

    /** As lessons, losses and findings are compared. */
    static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }
}
