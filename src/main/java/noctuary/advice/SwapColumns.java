package noctuary.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import noctuary.entry.RigNote.Price;
import noctuary.measure.Figure;
import noctuary.rig.Exchange;
import noctuary.rig.PartRole;
import noctuary.rig.RigFigures;
import noctuary.rig.RigSpec;
import noctuary.stats.Robust;

/** The columns of a {@link WhatIf}. */
final class SwapColumns {
    private final Map<String, List<EntryContext>> byRig;
    private final OptionalDouble seeing;

    /** @param seeing of the keeper's own nights, arcsec */
    SwapColumns(List<EntryContext> entries, OptionalDouble seeing) {
        this.byRig = entries.stream().collect(Collectors.groupingBy(EntryContext::rigId));
        this.seeing = seeing;
    }

    Swap own(Setup own) {
        return column(Swap.Kind.OWN, own, own, own.spec(), prices(own.prices()));
    }

    Swap whole(Setup own, Setup other) {
        return column(Swap.Kind.WHOLE, own, other, other.spec(), prices(other.prices()));
    }

    /** @param spec the own rig with that part of the other */
    Swap with(Setup own, Setup other, RigSpec spec, PartRole role) {
        Swap.Kind kind = own.id().equals(other.id()) ? Swap.Kind.EARLIER : Swap.Kind.PART;
        Map<String, BigDecimal> cost = Exchange.listed(own.prices(), other.prices(), role, Price::part)
                .map(SwapColumns::prices)
                .orElse(Map.of());
        return column(kind, own, other, spec, cost);
    }

    private Swap column(Swap.Kind kind, Setup own, Setup other, RigSpec spec, Map<String, BigDecimal> cost) {
        RigFigures figures = RigFigures.of(spec);
        boolean used = spec.equals(other.spec());
        return new Swap(
                kind,
                other.id(),
                other.until(),
                figures,
                ratio(light(spec), light(own.spec())),
                ratio(seeing, figures.imageScaleArcsecPerPx()),
                difference(figures.backFocusRequiredMm(), figures.backFocusActualMm()),
                spec.mountCapacityKg(),
                cost,
                used ? measured(other.entries(byRig.getOrDefault(other.id(), List.of()))) : Optional.empty());
    }

    /** What a pixel gathers of an extended sky goes with the squared product of aperture and scale. */
    private static OptionalDouble light(RigSpec spec) {
        OptionalDouble scale = RigFigures.of(spec).imageScaleArcsecPerPx();
        OptionalDouble aperture = spec.optics().apertureMm();
        return scale.isPresent() && aperture.isPresent()
                ? OptionalDouble.of(Math.pow(scale.getAsDouble() * aperture.getAsDouble(), 2))
                : OptionalDouble.empty();
    }

    private static OptionalDouble ratio(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.getAsDouble() / b.getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble difference(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.getAsDouble() - b.getAsDouble())
                : OptionalDouble.empty();
    }

    private static Map<String, BigDecimal> prices(List<Price> prices) {
        Map<String, BigDecimal> sums = new TreeMap<>();
        prices.forEach(p -> sums.merge(p.currency(), p.amount(), BigDecimal::add));
        return sums;
    }

    private static Optional<Swap.Measured> measured(List<EntryContext> own) {
        if (own.isEmpty()) {
            return Optional.empty();
        }
        double seconds = own.stream()
                .mapToDouble(e -> e.number(Figure.EXPOSURE).orElse(0))
                .sum();
        int nights = (int) own.stream()
                .flatMap(e -> e.sheet().night().value().stream())
                .distinct()
                .count();
        return Optional.of(new Swap.Measured(
                nights, seconds / 3600, median(own, Figure.FWHM_ARCSEC), median(own, Figure.ELLIPTICITY)));
    }

    private static OptionalDouble median(List<EntryContext> own, Figure figure) {
        double[] values = own.stream()
                .map(e -> e.number(figure))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        return values.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(values));
    }
}
