package noctuary.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.keep.Memo;
import noctuary.measure.Figure;
import noctuary.stats.Robust;

/** Works out the exposure that entries still want. */
final class ExposurePlans {
    private static final double[] GAINS = {0.25, 0.5, 1};

    private final List<EntryContext> entries;
    private final Memo memo;
    private final Map<String, Depth> depths = new LinkedHashMap<>();

    private ExposurePlans(List<EntryContext> entries, Memo memo) {
        this.entries = entries;
        this.memo = memo;
        entries.forEach(e -> depths.put(e.slug(), DepthReader.read(e)));
    }

    /** By slug; entries without exposure have none. */
    static Map<String, ExposurePlan> of(List<EntryContext> entries, Memo memo) {
        ExposurePlans plans = new ExposurePlans(entries, memo);
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
        Optional<NoiseGrowth> growth = NoiseGrowth.of(entry, memo);
        Optional<NoiseFall> fall = entry.noise().map(NoiseFall::new);
        return Optional.of(new ExposurePlan(
                entry.slug(),
                seconds,
                sub(depths.get(entry.slug())),
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
        return fall.map(f -> f.stayingShare(entry.lights().size()))
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
        Map<String, List<EntryContext>> places = new LinkedHashMap<>();
        for (EntryContext other : entries) {
            boolean alike =
                    other.filters().equals(entry.filters()) && variance(other).isPresent();
            boolean same = other.rigId().equals(entry.rigId()) && other.siteId().equals(entry.siteId());
            if (alike && !same) {
                places.computeIfAbsent(other.rigId() + " " + other.siteId(), k -> new ArrayList<>())
                        .add(other);
            }
        }
        return places.values().stream()
                .flatMap(there -> elsewhere(entry, seconds, here.getAsDouble(), there).stream())
                .toList();
    }

    private Optional<ExposurePlan.Elsewhere> elsewhere(
            EntryContext entry, double seconds, double here, List<EntryContext> there) {
        EntryContext other = there.get(0);
        boolean sameRig = other.rigId().equals(entry.rigId());
        OptionalDouble signal = sameRig ? OptionalDouble.of(1) : areaRatio(other, entry);
        if (signal.isEmpty()) {
            return Optional.empty();
        }
        double variance = Robust.median(
                there.stream().mapToDouble(o -> variance(o).getAsDouble()).toArray());
        double ratio = EqualDepth.timeRatio(variance / here, signal.getAsDouble());
        String nights = Words.count(there.size(), "night", "nights");
        String assuming =
                "noise as measured there on " + nights + (sameRig ? "" : "; light by the area of the apertures alone");
        return Optional.of(new ExposurePlan.Elsewhere(other.rigId(), other.siteId(), seconds * ratio, assuming));
    }

    /** Squared noise a second and square arcsecond, electrons, reading included. */
    private OptionalDouble variance(EntryContext entry) {
        Depth d = depths.get(entry.slug());
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
