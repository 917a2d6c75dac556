package noctuary.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import noctuary.measure.Figure;
import noctuary.stats.Robust;

/** Works out the exposure that entries still want. */
final class ExposurePlans {
    private static final double[] GAINS = {0.25, 0.5, 1};

    /** Of all places the ones that are told, those that take least. */
    private static final int TOLD = 5;

    private final Map<Set<String>, List<Place>> byFilters;

    /**
     * Entries with one rig at one site through the same filters, whose noise is known.
     *
     * @param variance median of the squared noise a second and square arcsecond, electrons, reading included
     */
    private record Place(EntryContext first, int nights, double variance, OptionalDouble aperture) {
        String id() {
            return first.rigId() + " " + first.siteId();
        }
    }

    /** One of the places with what it would take there. */
    private record There(Place place, double seconds, boolean sameRig) {
        static final Comparator<There> QUICKEST_FIRST = Comparator.comparingDouble(There::seconds)
                .thenComparing(there -> there.place().id());

        ExposurePlan.Elsewhere told() {
            String assuming = "noise as measured there on " + Words.count(place.nights(), "night", "nights")
                    + (sameRig ? "" : "; light by the area of the apertures alone");
            return new ExposurePlan.Elsewhere(
                    place.first().rigId(), place.first().siteId(), seconds, assuming);
        }
    }

    private ExposurePlans(List<EntryContext> entries) {
        Map<List<Object>, List<EntryContext>> groups = new LinkedHashMap<>();
        entries.stream()
                .filter(e -> variance(e).isPresent())
                .forEach(
                        e -> groups.computeIfAbsent(List.of(e.filters(), e.rigId(), e.siteId()), k -> new ArrayList<>())
                                .add(e));
        byFilters = groups.values().stream()
                .map(ExposurePlans::place)
                .collect(Collectors.groupingBy(place -> place.first().filters()));
    }

    private static Place place(List<EntryContext> there) {
        double[] variances =
                there.stream().mapToDouble(e -> variance(e).getAsDouble()).toArray();
        return new Place(there.get(0), there.size(), Robust.median(variances), aperture(there.get(0)));
    }

    /** By slug; entries without exposure have none. */
    static Map<String, ExposurePlan> of(List<EntryContext> entries) {
        ExposurePlans plans = new ExposurePlans(entries);
        Map<String, ExposurePlan> all = new LinkedHashMap<>();
        entries.parallelStream()
                .flatMap(entry -> plans.plan(entry).stream())
                .forEachOrdered(plan -> all.put(plan.slug(), plan));
        return all;
    }

    private Optional<ExposurePlan> plan(EntryContext entry) {
        OptionalDouble total = entry.number(Figure.EXPOSURE);
        if (total.isEmpty() || !(total.getAsDouble() > 0)) {
            return Optional.empty();
        }
        double seconds = total.getAsDouble();
        Optional<NoiseGrowth> growth = entry.traits().growth();
        Optional<NoiseFall> fall = entry.noise().map(NoiseFall::new);
        List<There> elsewhere = elsewhere(entry, seconds);
        return Optional.of(new ExposurePlan(
                entry.slug(),
                seconds,
                sub(entry.traits().known()),
                growth,
                fall,
                deeper(seconds, floor(entry, growth, fall)),
                elsewhere.stream().limit(TOLD).map(There::told).toList(),
                elsewhere.size()));
    }

    private static Optional<ExposurePlan.Sub> sub(Depth d) {
        OptionalDouble rate = d.backgroundRate();
        if (rate.isEmpty()) {
            return Optional.empty();
        }
        double readNoise = d.readNoiseE().getAsDouble();
        double sub = d.subSeconds().getAsDouble();
        OptionalDouble shortest = SubExposure.shortestSeconds(readNoise, rate.getAsDouble(), SubExposure.USUAL_GROWTH);
        double growth = SubExposure.growth(readNoise, rate.getAsDouble(), sub);
        return Optional.of(new ExposurePlan.Sub(
                sub,
                shortest.orElseThrow(),
                growth,
                rate.getAsDouble(),
                d.backgroundRateError(),
                d.levelRate(),
                d.starFree(),
                readNoise));
    }

    /** Share of the variance that does not average out: as the single frames tell, else as the stack does. */
    private static double floor(EntryContext entry, Optional<NoiseGrowth> growth, Optional<NoiseFall> fall) {
        return fall.map(f -> f.stayingShare(entry.traits().lights()))
                .or(() ->
                        growth.filter(NoiseGrowth::hasFloor).map(g -> g.model().floor() / (g.stack() * g.stack())))
                .orElse(0.0);
    }

    /** With a floor b, the variance a / N + b reaches a share q of what it is only when q σ² lies above b. */
    private static List<ExposurePlan.Deeper> deeper(double seconds, double floor) {
        List<ExposurePlan.Deeper> rows = new ArrayList<>();
        for (double gain : GAINS) {
            double share = 1 / EqualDepth.timeForMagnitudes(gain);
            double left = share - floor;
            rows.add(new ExposurePlan.Deeper(
                    gain, left > 0 ? OptionalDouble.of(seconds * (1 - floor) / left) : OptionalDouble.empty()));
        }
        return rows;
    }

    /** All other places whose noise is known, quickest first. */
    private List<There> elsewhere(EntryContext entry, double seconds) {
        OptionalDouble here = variance(entry);
        if (here.isEmpty()) {
            return List.of();
        }
        OptionalDouble aperture = aperture(entry);
        return byFilters.getOrDefault(entry.filters(), List.of()).stream()
                .filter(place -> !place.first().rigId().equals(entry.rigId())
                        || !place.first().siteId().equals(entry.siteId()))
                .flatMap(place -> there(entry, aperture, seconds, here.getAsDouble(), place).stream())
                .sorted(There.QUICKEST_FIRST)
                .toList();
    }

    private static Optional<There> there(
            EntryContext entry, OptionalDouble aperture, double seconds, double here, Place place) {
        boolean sameRig = place.first().rigId().equals(entry.rigId());
        OptionalDouble signal = sameRig ? OptionalDouble.of(1) : areaRatio(place.aperture(), aperture);
        if (signal.isEmpty()) {
            return Optional.empty();
        }
        double ratio = EqualDepth.timeRatio(place.variance() / here, signal.getAsDouble());
        return Optional.of(new There(place, seconds * ratio, sameRig));
    }

    /** Squared noise a second and square arcsecond, electrons, reading included. */
    private static OptionalDouble variance(EntryContext entry) {
        Depth d = entry.traits().known();
        if (d.noiseE().isEmpty() || d.subSeconds().isEmpty() || d.arcsecPerPx().isEmpty()) {
            return OptionalDouble.empty();
        }
        double noise = d.noiseE().getAsDouble() / d.arcsecPerPx().getAsDouble();
        return OptionalDouble.of(noise * noise / d.subSeconds().getAsDouble());
    }

    private static OptionalDouble areaRatio(OptionalDouble there, OptionalDouble here) {
        return there.isPresent() && here.isPresent()
                ? OptionalDouble.of(Math.pow(there.getAsDouble() / here.getAsDouble(), 2))
                : OptionalDouble.empty();
    }

    private static OptionalDouble aperture(EntryContext entry) {
        return entry.rigSheet()
                .map(r -> r.note().optics().get("aperture"))
                .map(t -> OptionalDouble.of(t.value().value()))
                .orElseGet(OptionalDouble::empty);
    }
}
