package noctuary.review;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The measure that decides about a change: named by the kind of change, before any value is looked at. */
final class Primary {
    /** Parts whose length sets the distance to the sensor. */
    private static final Set<String> SPACING = Set.of("spacer", "corrector", "reducer", "flattener", "adapter", "ring");

    /** Fewer on a side show nothing. */
    private static final int ENOUGH_NIGHTS = 3;

    private Primary() {}

    /** The first of the wanted measures with enough nights on both sides; else the first that both sides have at all. It comes first. */
    static List<MeasureNights> named(Change change, List<MeasureNights> measures) {
        String primary = first(change, measures, ENOUGH_NIGHTS)
                .or(() -> first(change, measures, 1))
                .orElse("");
        return measures.stream()
                .map(m -> new MeasureNights(m.measure(), m.measure().id().equals(primary), m.before(), m.after()))
                .sorted(Comparator.comparing(m -> !m.primary()))
                .toList();
    }

    private static Optional<String> first(Change change, List<MeasureNights> measures, int nights) {
        return wanted(change)
                .map(Measure::id)
                .filter(id -> measures.stream()
                        .filter(m -> m.measure().id().equals(id))
                        .anyMatch(m -> Math.min(m.before().size(), m.after().size()) >= nights))
                .findFirst();
    }

    private static Stream<Measure> wanted(Change change) {
        boolean spacing = change.part()
                .filter(p -> SPACING.stream().anyMatch(p::contains))
                .isPresent();
        return switch (change.kind()) {
            case RIG ->
                spacing
                        ? Stream.of(Gauges.CORNER_EXCESS, Gauges.ELLIPTICITY, Gauges.FWHM_ARCSEC)
                        : Stream.of(Gauges.FWHM_ARCSEC, Gauges.FWHM_PX, Gauges.GUIDING);
            case SITE -> Stream.of(Gauges.BACKGROUND_RATE, Gauges.FWHM_ARCSEC);
            case CHOICE ->
                sharpening(change)
                        ? Stream.of(ChoiceEvidence.FWHM, ChoiceEvidence.NOISE)
                        : Stream.of(ChoiceEvidence.NOISE, ChoiceEvidence.FWHM);
            case WAY -> Stream.of(Gauges.FWHM_ARCSEC, Gauges.FWHM_PX, Gauges.GUIDING);
        };
    }

    /** Whether the step is about the width of stars, by its name. */
    private static boolean sharpening(Change change) {
        return change.part()
                .map(p -> p.toLowerCase(Locale.ROOT))
                .filter(p -> p.contains("sharp") || p.contains("deconvol"))
                .isPresent();
    }
}
