package noctuary.review;

import noctuary.entry.Entry;
import noctuary.measure.Figure;

/** What the keeper's notes and the exposures tell of the night's work. It belongs to an entry's first night. */
final class WorkReadings {
    private static final String OTHER_NIGHT = "the note tells it for the entry as a whole, on its first night";
    private static final double SECONDS_PER_MINUTE = 60;

    private WorkReadings() {}

    static Reading guiding(EntryNight night) {
        return night.sheet()
                .number(Figure.GUIDING_RMS)
                .map(q -> Reading.of(q.value(), 1))
                .filter(r -> night.first())
                .orElseGet(() -> Reading.missing(night.first() ? "the note does not tell it" : OTHER_NIGHT));
    }

    /** Exposure over the astronomical night, percent. */
    static Reading usedOfDark(EntryNight night) {
        if (night.exposureSeconds().isEmpty()) {
            return Reading.missing("the exposure is not known");
        }
        double dark = night.sky().darkHours().orElse(0) * 3600;
        return dark > 0
                ? Reading.of(100 * night.exposureSeconds().getAsDouble() / dark, 1)
                : Reading.missing("the site's coordinates are not known, or the night had no dark hours");
    }

    /** Exposure over exposure and lost time, percent. */
    static Reading usedOfClear(EntryNight night) {
        Reading lost = lost(night);
        if (night.exposureSeconds().isEmpty() || lost.value().isEmpty()) {
            return Reading.missing(lost.value().isEmpty() ? lost.why() : "the exposure is not known");
        }
        double used = night.exposureSeconds().getAsDouble();
        return Reading.of(100 * used / (used + lost.value().getAsDouble() * SECONDS_PER_MINUTE), 1);
    }

    /** A note that lists no loss counts as none lost. */
    static Reading lost(EntryNight night) {
        return night.first()
                ? Reading.of(
                        night.sheet().entry().lost().stream()
                                .mapToDouble(Entry.Lost::minutes)
                                .sum(),
                        1)
                : Reading.missing(OTHER_NIGHT);
    }
}
