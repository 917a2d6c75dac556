package noctuary.site;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import noctuary.advice.Swap;
import noctuary.advice.WhatIf;
import noctuary.rig.Check;
import noctuary.rig.RigFigures;
import noctuary.site.page.DeskPart;

/** One part exchanged, side by side, one row a number; rows that no column knows are left out. */
final class SwapTable {
    /** Differences that a line tells before the table is opened. */
    private static final int TOLD = 4;

    private final Ledger ledger;
    private final WhatIf whatIf;

    SwapTable(Ledger ledger, WhatIf whatIf) {
        this.ledger = ledger;
        this.whatIf = whatIf;
    }

    DeskPart.SwapPart part() {
        List<DeskPart.SwapRow> rows = rows();
        String part = whatIf.part();
        return new DeskPart.SwapPart(
                part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1),
                differences(rows),
                whatIf.columns().stream().map(this::heading).toList(),
                rows,
                whatIf.columns().stream()
                        .filter(s -> s.kind() != Swap.Kind.OWN && s.kind() != Swap.Kind.WHOLE)
                        .flatMap(this::troubles)
                        .toList(),
                whatIf.leftOut());
    }

    private String heading(Swap s) {
        return switch (s.kind()) {
            case OWN -> name(s) + ", as it is";
            case PART -> "with the " + whatIf.part() + " of " + name(s);
            case EARLIER ->
                "with the " + whatIf.part() + " it had"
                        + s.until().map(day -> " until " + day).orElse(" before");
            case WHOLE -> name(s) + ", as it is";
        };
    }

    private String name(Swap s) {
        return ledger.content().rigs().get(s.rig()).note().name().value();
    }

    private Stream<String> troubles(Swap s) {
        String with = heading(s);
        String start = with.substring(0, 1).toUpperCase(Locale.ROOT) + with.substring(1) + ": ";
        return s.troubles().stream().map(c -> ledger.discretion().text(start + c.text()));
    }

    /** "Scale 1.33 to 1.09 arcsec/px; …" for the first exchange. */
    private static String differences(List<DeskPart.SwapRow> rows) {
        return rows.stream()
                .filter(row -> row.cells().get(1).changed()
                        && !row.cells().get(0).value().isEmpty()
                        && !row.cells().get(1).value().isEmpty())
                .limit(TOLD)
                .map(row -> row.label() + " " + row.cells().get(0).value() + " → "
                        + row.cells().get(1).value())
                .collect(Collectors.joining("; "));
    }

    private List<DeskPart.SwapRow> rows() {
        return Stream.of(optics(), mechanics(), history())
                .flatMap(rows -> rows)
                .filter(row ->
                        row.cells().stream().anyMatch(cell -> !cell.value().isEmpty()))
                .toList();
    }

    private Stream<DeskPart.SwapRow> optics() {
        return Stream.of(
                row("Scale, arcsec/px", s -> fixed(s.figures().imageScaleArcsecPerPx(), 2)),
                row("Field, deg", SwapTable::field),
                row("Pixels across your stars", s -> fixed(s.sampling(), 1)),
                row("Sky light in a pixel, times as it is", s -> fixed(s.light(), 2)),
                row("Focal length, mm", s -> fixed(s.figures().effectiveFocalLengthMm(), 0)),
                row("Focal ratio", s -> fixed(s.figures().focalRatio(), 1)),
                row("Diffraction, arcsec", s -> fixed(s.figures().airyFwhmArcsec(), 2)),
                row("Depth of focus, ± µm", s -> fixed(s.figures().depthOfFocusUm(), 0)));
    }

    private Stream<DeskPart.SwapRow> mechanics() {
        return Stream.of(
                row("Spacing there, mm", s -> fixed(s.figures().backFocusActualMm(), 2)),
                row("Spacing still wanted, mm", s -> signed(s.shimMm())),
                row("Joints", s -> joints(s.figures())),
                row("Sensor in the image circle", s -> circle(s.figures())),
                row("Load, kg", s -> fixed(s.figures().payloadKg(), 1)),
                row("Load, % of the rating", SwapTable::load),
                row("Cost", SwapTable::cost));
    }

    private Stream<DeskPart.SwapRow> history() {
        return Stream.of(
                row("Nights", s -> s.measured().map(m -> "" + m.nights()).orElse("")),
                row(
                        "Hours",
                        s -> s.measured().map(m -> Numerals.fixed(m.hours(), 1)).orElse("")),
                row(
                        "Star FWHM measured, arcsec",
                        s -> s.measured().map(m -> fixed(m.fwhmArcsec(), 2)).orElse("")),
                row(
                        "Ellipticity measured",
                        s -> s.measured().map(m -> fixed(m.ellipticity(), 2)).orElse("")));
    }

    /** Values of an exchange that differ from the rig as it is are marked. */
    private DeskPart.SwapRow row(String label, Function<Swap, String> value) {
        List<String> values = whatIf.columns().stream()
                .map(value)
                .map(ledger.discretion()::text)
                .toList();
        return new DeskPart.SwapRow(
                label,
                IntStream.range(0, values.size())
                        .mapToObj(i -> new DeskPart.SwapCell(
                                values.get(i),
                                whatIf.columns().get(i).kind() != Swap.Kind.WHOLE
                                        && !values.get(i).equals(values.get(0))))
                        .toList());
    }

    private static String field(Swap s) {
        return s.figures().fieldWidthDeg().isPresent()
                        && s.figures().fieldHeightDeg().isPresent()
                ? fixed(s.figures().fieldWidthDeg(), 2) + " × "
                        + fixed(s.figures().fieldHeightDeg(), 2)
                : "";
    }

    private static String joints(RigFigures figures) {
        List<Check> joints = figures.checks().stream()
                .filter(c -> c.id().startsWith("joint-"))
                .toList();
        long wrong = joints.stream().filter(c -> c.level() == Check.Level.WRONG).count();
        long open = joints.stream().filter(c -> c.level() == Check.Level.WARN).count();
        if (joints.isEmpty()) {
            return "";
        }
        if (wrong > 0) {
            return wrong + " of " + joints.size() + " will not mate";
        }
        return open > 0 ? open + " of " + joints.size() + " to look at" : "all mate";
    }

    private static String circle(RigFigures figures) {
        return figures.checks().stream()
                .filter(c -> c.id().equals("image-circle"))
                .map(c -> c.level() == Check.Level.OK ? "inside" : "corners outside")
                .findFirst()
                .orElse("");
    }

    private static String load(Swap s) {
        return s.figures().payloadKg().isPresent() && s.ratedKg().isPresent()
                ? Numerals.fixed(
                        100
                                * s.figures().payloadKg().getAsDouble()
                                / s.ratedKg().getAsDouble(),
                        0)
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
