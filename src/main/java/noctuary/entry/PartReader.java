package noctuary.entry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import noctuary.entry.RigNote.Part;
import noctuary.entry.RigNote.Price;
import noctuary.fact.Unit;

/** The lists of a rig: train, payload, cost. */
final class PartReader {
    private PartReader() {}

    static List<Part> parts(Fields rig, String key) {
        List<Part> parts = new ArrayList<>();
        for (Fields fields : rig.groups(key, "\"- {part: spacer, length: 10 mm}\"")) {
            var name = fields.needed("part", Forms::text, "\"part: spacer\"");
            var since = fields.one("since", Forms::date);
            var length = fields.one("length", TypedQuantity.notNegative(Unit.MILLIMETRE));
            var glass = fields.one("glass", TypedQuantity.notNegative(Unit.MILLIMETRE));
            var mass = fields.one("mass", TypedQuantity.notNegative(Unit.KILOGRAM));
            var front = fields.one("front", Forms::text);
            var rear = fields.one("rear", Forms::text);
            fields.refuseOthers();
            name.ifPresent(typed -> {
                var part = new Part(typed.value(), since.map(Typed::value), length, glass, mass, front, rear);
                refuseTwins(parts, part, fields.line(), key, rig.margin());
                parts.add(part);
            });
        }
        return parts;
    }

    private static void refuseTwins(List<Part> parts, Part part, int line, String key, Margin margin) {
        List<Part> namesakes =
                parts.stream().filter(other -> other.name().equals(part.name())).toList();
        if (namesakes.stream()
                .anyMatch(other -> part.since().isPresent() && other.since().equals(part.since()))) {
            margin.fault(line, key, "two parts " + Margin.quoted(part.name()) + " since the same day", "drop one");
        }
        Set<Boolean> dated = new HashSet<>();
        namesakes.forEach(other -> dated.add(other.since().isPresent()));
        boolean undatedTwice = part.since().isEmpty()
                ? dated.size() == 2
                : namesakes.stream().filter(other -> other.since().isEmpty()).count() > 1;
        if (undatedTwice) {
            margin.fault(
                    line,
                    key,
                    "it is not clear which " + Margin.quoted(part.name()) + " was replaced",
                    "give the parts different names");
        }
    }

    static List<Price> cost(Fields rig) {
        List<Price> cost = new ArrayList<>();
        for (Fields fields : rig.groups("cost", "\"- {part: tube, price: 640 EUR}\"")) {
            var part = fields.needed("part", Forms::text, "\"part: tube\"");
            var price = fields.needed("price", TypedPrice::of, "\"price: 640 EUR\"");
            fields.refuseOthers();
            if (part.isPresent() && price.isPresent()) {
                TypedPrice typed = price.get().value();
                cost.add(new Price(part.get().value(), typed.amount(), typed.currency()));
            }
        }
        return cost;
    }
}
