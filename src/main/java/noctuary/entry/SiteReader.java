package noctuary.entry;

import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;

/** {@code entries/sites/ID.md} to a site. */
final class SiteReader {
    private SiteReader() {}

    static Site read(String id, Note note, NoteHtml.Page page, Margin margin) {
        var fields = new Fields(note.keys(), margin);
        var site = new Site(
                id,
                margin.file(),
                fields.needed("name", Forms::text, "\"name: Terrace\"")
                        .map(Typed::value)
                        .orElse(id),
                value(fields.one("latitude", TypedQuantity.between(Unit.DEGREE, -90, 90))),
                value(fields.one("longitude", TypedQuantity.between(Unit.DEGREE, -180, 180))),
                value(fields.one("elevation", TypedQuantity.between(Unit.METRE, -500, 9000))),
                fields.one("time zone", Forms::zone).map(Typed::value),
                page.html(),
                page.attachments());
        fields.refuseOthers();
        return site;
    }

    private static OptionalDouble value(Optional<Typed<Quantity>> quantity) {
        return quantity.map(typed -> OptionalDouble.of(typed.value().value())).orElse(OptionalDouble.empty());
    }
}
