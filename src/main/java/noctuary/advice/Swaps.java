package noctuary.advice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import noctuary.entry.RigNote.Price;
import noctuary.measure.Figure;
import noctuary.measure.RigSheet;
import noctuary.measure.RigSpecs;
import noctuary.rig.Check;
import noctuary.rig.RigFigures;
import noctuary.rig.RigSpec;
import noctuary.stats.Robust;

/** One part swapped for another: the camera of each rig behind the optics of each other. */
final class Swaps {
    private final Map<String, RigSheet> rigs;
    private final Map<String, RigSpec> specs = new LinkedHashMap<>();
    private final List<EntryContext> entries;
    private final OptionalDouble seeing;

    Swaps(Map<String, RigSheet> rigs, List<EntryContext> entries, OptionalDouble seeing) {
        this.rigs = rigs;
        this.entries = entries;
        this.seeing = seeing;
        rigs.forEach(
                (id, rig) -> specs.put(id, RigSpecs.on(rig.note(), rig.latest().from())));
    }

    /** The rig as it is, then with every other camera, then every other rig with its camera, and those as they are. */
    List<Swap> around(String id) {
        List<Swap> swaps = new ArrayList<>();
        swaps.add(swap(id, id));
        for (String other : rigs.keySet()) {
            if (!other.equals(id)) {
                swaps.add(swap(id, other));
                swaps.add(swap(other, id));
                swaps.add(swap(other, other));
            }
        }
        return swaps;
    }

    private Swap swap(String optics, String camera) {
        RigFigures figures = RigFigures.of(spec(specs.get(optics), specs.get(camera)));
        OptionalDouble scale = figures.imageScaleArcsecPerPx();
        boolean spaced = figures.backFocusActualMm().isPresent()
                && figures.backFocusRequiredMm().isPresent();
        return new Swap(
                optics,
                camera,
                figures,
                seeing.isPresent() && scale.isPresent()
                        ? OptionalDouble.of(seeing.getAsDouble() / scale.getAsDouble())
                        : OptionalDouble.empty(),
                spaced
                        ? OptionalDouble.of(figures.backFocusRequiredMm().getAsDouble()
                                - figures.backFocusActualMm().getAsDouble())
                        : OptionalDouble.empty(),
                cost(optics, camera),
                figures.checks().stream()
                        .filter(c -> c.level() != Check.Level.OK)
                        .map(Check::text)
                        .toList(),
                optics.equals(camera) ? measured(optics) : Optional.empty());
    }

    private static RigSpec spec(RigSpec optics, RigSpec camera) {
        if (optics == camera) {
            return optics;
        }
        List<RigSpec.TrainPart> train = new ArrayList<>(
                optics.train().stream().filter(p -> !isCamera(p.name())).toList());
        camera.train().stream().filter(p -> isCamera(p.name())).forEach(train::add);
        List<RigSpec.Load> payload = new ArrayList<>(
                optics.payload().stream().filter(l -> !isCamera(l.name())).toList());
        camera.payload().stream().filter(l -> isCamera(l.name())).forEach(payload::add);
        return new RigSpec(optics.optics(), camera.camera(), train, optics.mountCapacityKg(), payload);
    }

    /** By name; the guide camera stays with its scope. */
    private static boolean isCamera(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.contains("camera") && !lower.contains("guide");
    }

    private Map<String, BigDecimal> cost(String optics, String camera) {
        Map<String, BigDecimal> sums = new TreeMap<>();
        for (Price price : rigs.get(optics).note().cost()) {
            if (optics.equals(camera) || !isCamera(price.part())) {
                sums.merge(price.currency(), price.amount(), BigDecimal::add);
            }
        }
        if (!optics.equals(camera)) {
            rigs.get(camera).note().cost().stream()
                    .filter(price -> isCamera(price.part()))
                    .forEach(price -> sums.merge(price.currency(), price.amount(), BigDecimal::add));
        }
        return sums;
    }

    private Optional<Swap.Measured> measured(String id) {
        List<EntryContext> own =
                entries.stream().filter(e -> e.rigId().equals(id)).toList();
        if (own.isEmpty()) {
            return Optional.empty();
        }
        double[] widths = own.stream()
                .map(e -> e.number(Figure.FWHM_ARCSEC))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        double seconds = own.stream()
                .mapToDouble(e -> e.number(Figure.EXPOSURE).orElse(0))
                .sum();
        int nights = (int) own.stream()
                .flatMap(e -> e.sheet().night().value().stream())
                .distinct()
                .count();
        return Optional.of(new Swap.Measured(
                nights,
                widths.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(widths)),
                seconds / 3600));
    }
}
