package noctuary.measure;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import noctuary.effect.Effect;

/** The colour of a background that should be grey. */
record ColourCast(String text, String evidence) {
    private static final double LEAST_PERCENT = 3;
    /** One step of eight bits: less cannot be seen, nor told from rounding. */
    private static final double LEAST_SHARE = 1 / 255.0;

    private static final String[] TOWARDS = {"red", "green", "blue"};
    private static final String[] AWAY = {"cyan", "magenta", "yellow"};

    static Optional<ColourCast> of(Effect effect) {
        List<Double> cast = effect.castPercent();
        if (cast.isEmpty()) {
            return Optional.empty();
        }
        int most = 0;
        for (int c = 1; c < cast.size(); c++) {
            most = Math.abs(cast.get(c)) > Math.abs(cast.get(most)) ? c : most;
        }
        double percent = cast.get(most);
        double level = effect.stretch().map(Effect.Stretch::background).orElse(1.0);
        if (Math.abs(percent) < LEAST_PERCENT || Math.abs(percent) / 100 * level < LEAST_SHARE) {
            return Optional.empty();
        }
        String colour = percent > 0 ? TOWARDS[most] : AWAY[most];
        return Optional.of(new ColourCast(
                colour + " background by " + Math.round(Math.abs(percent)) + " %",
                String.format(
                        Locale.ROOT,
                        "red %+.1f %%, green %+.1f %%, blue %+.1f %% against the mean of the three",
                        cast.get(0),
                        cast.get(1),
                        cast.get(2))));
    }
}
