package noctuary.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.measure.Figure;
import noctuary.stats.Robust;

/** Works out the exposure that entries still want. */
final class ExposurePlans {
    private static final double[] GAINS = {0.25, 0.5, 1};

    private final List<Place> places;

    /**
     * Entries with one rig at one site through the same filters, whose noise is known.
     *
     * @param variance median of the squared noise a second and square arcsecond, electrons, reading included
     */
    private record Place(EntryContext first, int nights, double variance) {}

    private ExposurePlans(List<EntryContext> entries) {
        Map<List<Object>, List<EntryContext>> groups = new LinkedHashMap<>();
        entries.stream()
                .filter(e -> variance(e).isPresent())
                .forEach(
                        e -> groups.computeIfAbsent(List.of(e.filters(), e.rigId(), e.siteId()), k -> new ArrayList<>())
                                .add(e));
        places = groups.values().stream().map(ExposurePlans::place).toList();
    }

    private static Place place(List<EntryContext> there) {
        double[] variances =
                there.stream().mapToDouble(e -> variance(e).getAsDouble()).toArray();
        return new Place(there.get(0), there.size(), Robust.median(variances));
    }

    /** By slug; entries without exposure have none. */
    static Map<String, ExposurePlan> of(List<EntryContext> entries) {
        ExposurePlans plans = new ExposurePlans(entries);
        Map<String, ExposurePlan> all = new LinkedHashMap<>();
        for (EntryContext entry : entries) {
            plans.plan(entry).ifPresent(plan -> all.put(entry.slug(), plan));
        }
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
        return Optional.of(new ExposurePlan(
                entry.slug(),
                seconds,
                sub(entry.traits().known()),
                growth,
                fall,
                deeper(seconds, floor(entry, growth, fall)),
                elsewhere(entry, seconds)));
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

    private List<ExposurePlan.Elsewhere> elsewhere(EntryContext entry, double seconds) {
        OptionalDouble here = variance(entry);
        if (here.isEmpty()) {
            return List.of();
        }
        return places.stream()
                .filter(there -> there.first().filters().equals(entry.filters()))
                .filter(there -> !there.first().rigId().equals(entry.rigId())
                        || !there.first().siteId().equals(entry.siteId()))
                .flatMap(there -> elsewhere(entry, seconds, here.getAsDouble(), there).stream())
                .toList();
    }

    private static Optional<ExposurePlan.Elsewhere> elsewhere(
            EntryContext entry, double seconds, double here, Place there) {
        EntryContext other = there.first();
        boolean sameRig = other.rigId().equals(entry.rigId());
        OptionalDouble signal = sameRig ? OptionalDouble.of(1) : areaRatio(other, entry);
        if (signal.isEmpty()) {
            return Optional.empty();
        }
        double ratio = EqualDepth.timeRatio(there.variance() / here, signal.getAsDouble());
        String nights = Words.count(there.nights(), "night", "nights");
        String assuming =
                "noise as measured there on " + nights + (sameRig ? "" : "; light by the area of the apertures alone");
        return Optional.of(new ExposurePlan.Elsewhere(other.rigId(), other.siteId(), seconds * ratio, assuming));
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

    private static OptionalDouble areaRatio(EntryContext there, EntryContext here) {
        OptionalDouble a = aperture(there);
        OptionalDouble b = aperture(here);
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(Math.pow(a.getAsDouble() / b.getAsDouble(), 2))
                : OptionalDouble.empty();
    }

    private static OptionalDouble aperture(EntryContext entry) {
        return entry.rigSheet()
                .map(r -> r.note().optics().get("aperture"))
                .map(t -> OptionalDouble.of(t.value().value()))
                .orElseGet(OptionalDouble::empty);
    }
}
