package noctuary.site;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import noctuary.entry.RigNote;
import noctuary.entry.Typed;
import noctuary.fact.Quantity;
import noctuary.measure.RigSheet;
import noctuary.review.Parts;
import noctuary.site.page.Labelled;
import noctuary.site.page.RigPage;

/** The parts of a rig as printed: train, history, payload, cost. */
final class RigParts {
    private final RigSheet rig;

    RigParts(RigSheet rig) {
        this.rig = rig;
    }

    List<RigPage.PartRow> train() {
        return rig.latest().train().stream()
                .map(part -> new RigPage.PartRow(
                        part.name(),
                        part.front().map(Typed::value).orElse(""),
                        number(part.length()),
                        number(part.glass()),
                        part.rear().map(Typed::value).orElse("")))
                .toList();
    }

    /** One row a state, oldest first. */
    List<RigPage.StateRow> history() {
        return rig.states().stream().map(this::state).toList();
    }

    private RigPage.StateRow state(RigSheet.State state) {
        boolean first = state == rig.states().get(0);
        List<String> what = first
                ? List.of("first use")
                : Parts.fresh(state).stream().map(Parts::named).toList();
        String backFocus = state.figures().backFocusActualMm().isPresent()
                ? Numerals.fixed(state.figures().backFocusActualMm(), 2) + "\u00a0mm"
                : "";
        return new RigPage.StateRow(state.from().toString(), what, backFocus);
    }

    List<Labelled> payload() {
        return rig.note().payloadOn(rig.latest().from()).stream()
                .map(part -> new Labelled(part.name(), number(part.mass())))
                .toList();
    }

    String payloadTotal() {
        return rig.latest().figures().payloadKg().isPresent()
                ? Numerals.fixed(rig.latest().figures().payloadKg(), 2) + "\u00a0kg"
                : "";
    }

    /** The mount and what it is rated for. */
    String mount() {
        String name = rig.note().mountName().orElse("");
        String rated = rig.note()
                .mountCapacity()
                .map(capacity ->
                        "rated for " + Numerals.trimmed(capacity.value().value(), 2) + "\u00a0kg")
                .orElse("");
        return name.isEmpty() || rated.isEmpty() ? name + rated : name + ", " + rated;
    }

    List<Labelled> cost() {
        return rig.note().cost().stream()
                .map(price -> new Labelled(price.part(), money(price.amount(), price.currency())))
                .toList();
    }

    List<Labelled> costTotals() {
        return totals(rig.note()).entrySet().stream()
                .map(e -> new Labelled(e.getKey(), money(e.getValue(), e.getKey())))
                .toList();
    }

    /** Sums by currency. */
    static Map<String, BigDecimal> totals(RigNote note) {
        Map<String, BigDecimal> totals = new TreeMap<>();
        note.cost().forEach(price -> totals.merge(price.currency(), price.amount(), BigDecimal::add));
        return totals;
    }

    static String money(BigDecimal amount, String currency) {
        return amount.stripTrailingZeros().scale() <= 0
                ? amount.stripTrailingZeros().setScale(0).toPlainString() + "\u00a0" + currency
                : amount.toPlainString() + "\u00a0" + currency;
    }

    private static String number(Optional<Typed<Quantity>> quantity) {
        return quantity.map(q -> Numerals.of(q.value())).orElse("");
    }
}
