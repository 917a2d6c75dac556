package noctuary.entry;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;

/** {@code entries/rigs/ID.md} to a rig. */
final class RigReader {
    private static final Map<String, Form<Quantity>> OPTICS = new LinkedHashMap<>();
    private static final Map<String, Form<Quantity>> CAMERA = new LinkedHashMap<>();

    static {
        OPTICS.put("aperture", TypedQuantity.positive(Unit.MILLIMETRE));
        OPTICS.put("focal length", TypedQuantity.positive(Unit.MILLIMETRE));
        OPTICS.put("reducer", Forms::factor);
        OPTICS.put("back focus", TypedQuantity.positive(Unit.MILLIMETRE));
        OPTICS.put("image circle", TypedQuantity.positive(Unit.MILLIMETRE));
        CAMERA.put("pixel", TypedQuantity.positive(Unit.MICROMETRE));
        CAMERA.put("width", Forms::pixels);
        CAMERA.put("height", Forms::pixels);
        CAMERA.put("read noise", TypedQuantity.notNegative(Unit.ELECTRON));
        CAMERA.put("gain", TypedQuantity.positive(Unit.ELECTRON_PER_ADU));
        CAMERA.put("full well", TypedQuantity.positive(Unit.ELECTRON));
        CAMERA.put("temperature", TypedQuantity.between(Unit.CELSIUS, -150, 60));
    }

    private RigReader() {}

    static RigNote read(String id, Note note, NoteHtml.Page page, Margin margin) {
        var fields = new Fields(note.keys(), margin);
        Typed<String> name = fields.needed("name", Forms::text, "\"name: The long tube\"")
                .orElse(new Typed<>(id, margin.file(), 1, "name", id));
        Optional<InUse> inUse = fields.one("in use", InUse::of).map(Typed::value);
        Fields camera = fields.group("camera", "\"camera: {pixel: 3.3 µm}\"");
        var mosaic = camera.one("mosaic", Forms::mosaic);
        Fields mount = fields.group("mount", "\"mount: {name: the grey one, capacity: 20 kg}\"");
        Optional<LocalDate> from = inUse.map(InUse::from);
        var rig = new RigNote(
                id,
                margin.file(),
                name,
                from,
                inUse.flatMap(InUse::to),
                quantities(fields.group("optics", "\"optics: {aperture: 150 mm}\""), OPTICS),
                quantities(camera, CAMERA),
                mosaic,
                PartReader.parts(fields, "train"),
                mount.one("name", Forms::text).map(Typed::value),
                mount.one("capacity", TypedQuantity.positive(Unit.KILOGRAM)),
                PartReader.parts(fields, "payload"),
                PartReader.cost(fields),
                page.html(),
                page.attachments());
        List.of(mount, fields).forEach(Fields::refuseOthers);
        return rig;
    }

    private static Map<String, Typed<Quantity>> quantities(Fields fields, Map<String, Form<Quantity>> keys) {
        Map<String, Typed<Quantity>> quantities = new LinkedHashMap<>();
        keys.forEach((key, form) -> fields.one(key, form).ifPresent(quantity -> quantities.put(key, quantity)));
        fields.refuseOthers();
        return quantities;
    }
}
