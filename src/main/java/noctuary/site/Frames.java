package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import noctuary.draw.Framing;
import noctuary.rig.RigFigures;
import noctuary.site.page.Drawing;
import noctuary.sky.DeepSkyObject;

/** An object in the fields of every rig, to one scale. */
final class Frames {
    private static final double ARCMIN_PER_DEG = 60;

    private final List<String> names = new ArrayList<>();
    private final List<Framing.Field> fields = new ArrayList<>();

    Frames(Ledger ledger) {
        ledger.content()
                .rigs()
                .values()
                .forEach(rig -> add(rig.note().name().value(), rig.latest().figures()));
    }

    private void add(String name, RigFigures figures) {
        names.add(name);
        if (figures.fieldWidthDeg().isPresent() && figures.fieldHeightDeg().isPresent()) {
            fields.add(new Framing.Field(
                    name,
                    ARCMIN_PER_DEG * figures.fieldWidthDeg().getAsDouble(),
                    ARCMIN_PER_DEG * figures.fieldHeightDeg().getAsDouble()));
        }
    }

    /** Null when no rig tells its field. */
    Drawing around(DeepSkyObject target) {
        if (fields.isEmpty()) {
            return null;
        }
        Framing framing = new Framing(
                "Framing of " + target.name(),
                target.name(),
                Math.max(target.widthArcmin(), target.heightArcmin()),
                Math.min(target.widthArcmin(), target.heightArcmin()),
                names,
                fields);
        return Charts.drawing(framing, "framing", target.name() + " in the fields of every rig, to scale.");
    }
}
