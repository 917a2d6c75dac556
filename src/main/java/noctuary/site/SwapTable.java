package noctuary.site;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import noctuary.advice.Swap;
import noctuary.measure.RigSheet;
import noctuary.site.page.DeskPart;

/** Rigs and swaps side by side, one row a number; rows that no column knows are left out. */
final class SwapTable {
    private final Ledger ledger;
    private final List<Swap> swaps;

    SwapTable(Ledger ledger, List<Swap> swaps) {
        this.ledger = ledger;
        this.swaps = swaps;
    }

    List<DeskPart.SwapColumn> columns() {
        return swaps.size() < 2
                ? List.of()
                : swaps.stream()
                        .map(s -> new DeskPart.SwapColumn(name(s.optics()), name(s.camera()), s.asItIs()))
                        .toList();
    }

    List<DeskPart.SwapRow> rows() {
        return Stream.of(
                        row("Focal length, mm", s -> fixed(s.figures().effectiveFocalLengthMm(), 0)),
                        row("Focal ratio", s -> fixed(s.figures().focalRatio(), 1)),
                        row("Scale, arcsec/px", s -> fixed(s.figures().imageScaleArcsecPerPx(), 2)),
                        row("Field, deg", SwapTable::field),
                        row("Diffraction, arcsec", s -> fixed(s.figures().airyFwhmArcsec(), 2)),
                        row("Pixels across your stars", s -> fixed(s.sampling(), 1)),
                        row("Depth of focus, ± µm", s -> fixed(s.figures().depthOfFocusUm(), 0)),
                        row("Spacing still wanted, mm", s -> signed(s.shimMm())),
                        row("Load, kg", s -> fixed(s.figures().payloadKg(), 1)),
                        row("Cost", SwapTable::cost),
                        row("To look at", s -> String.join(" ", s.troubles())),
                        row(
                                "Nights",
                                s -> s.measured().map(m -> "" + m.nights()).orElse("")),
                        row(
                                "Hours",
                                s -> s.measured()
                                        .map(m -> Numerals.fixed(m.hours(), 1))
                                        .orElse("")),
                        row(
                                "Star FWHM measured, arcsec",
                                s -> s.measured()
                                        .map(m -> fixed(m.fwhmArcsec(), 2))
                                        .orElse("")))
                .filter(row -> row.values().stream().anyMatch(value -> !value.isEmpty()))
                .toList();
    }

    private DeskPart.SwapRow row(String label, Function<Swap, String> value) {
        return new DeskPart.SwapRow(
                label, swaps.stream().map(value).map(ledger.discretion()::text).toList());
    }

    private String name(String id) {
        RigSheet rig = ledger.content().rigs().get(id);
        return rig.note().name().value();
    }

    private static String field(Swap s) {
        return s.figures().fieldWidthDeg().isPresent()
                        && s.figures().fieldHeightDeg().isPresent()
                ? fixed(s.figures().fieldWidthDeg(), 2) + " × "
                        + fixed(s.figures().fieldHeightDeg(), 2)
                : "";
    }

    private static String cost(Swap s) {
        return s.cost().entrySet().stream()
                .map(e -> RigParts.money(e.getValue(), e.getKey()))
                .collect(Collectors.joining(", "));
    }

    private static String signed(OptionalDouble value) {
        String text = fixed(value, 2);
        return value.isPresent() && value.getAsDouble() > 0.005 ? "+" + text : text;
    }

    private static String fixed(OptionalDouble value, int decimals) {
        return Numerals.fixed(value, decimals);
    }
}
