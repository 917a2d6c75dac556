package noctuary.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.effect.Amount;
import noctuary.effect.Effect;
import noctuary.effect.StarFates;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;
import noctuary.measure.Observation;
import noctuary.measure.VersionSheet;

/** Invented effects of the fixture's versions: the first of an entry measured, the others not. */
final class FixtureVersions {
    private static final Amount BLACK = Amount.absent("too much of the background is cut to black to tell");

    private FixtureVersions() {}

    static Map<String, List<VersionSheet>> all(List<EntrySheet> entries) {
        Map<String, List<VersionSheet>> all = new LinkedHashMap<>();
        entries.forEach(sheet -> all.put(
                sheet.entry().slug(),
                sheet.entry().versions().stream()
                        .map(v -> sheet(v, v == sheet.entry().versions().get(0)))
                        .toList()));
        return all;
    }

    private static VersionSheet sheet(Entry.Version version, boolean measured) {
        return measured
                ? new VersionSheet(
                        version,
                        Optional.of(effect()),
                        "",
                        List.of(new Observation(
                                "version-noise-taken", "Noise reduction took 59 % of the noise", "0.41 at 1 px")))
                : new VersionSheet(version, Optional.empty(), "the picture cannot be read", List.of());
    }

    private static Effect effect() {
        return new Effect(
                Optional.of(new Effect.Laid(120, 0.11, 1, 180, true, false)),
                Optional.of(new Effect.Stretch(Amount.of(61.2), 0.06, 0.01)),
                List.of(new Effect.Scale(1, Amount.of(0.41)), new Effect.Scale(8, BLACK)),
                BLACK,
                BLACK,
                new Effect.Neighbours(Amount.of(0.08), Amount.of(0.62)),
                Optional.of(new StarFates(
                        List.of(
                                new StarFates.Bin(0, 10, 40, 12),
                                new StarFates.Bin(20, Double.POSITIVE_INFINITY, 60, 0)),
                        2)),
                Amount.of(1.041),
                0.006,
                Amount.of(0.002),
                Amount.of(0.71),
                Amount.of(0.93),
                Amount.of(0),
                Amount.of(0.6),
                0.4,
                0.06,
                Amount.of(1.2),
                List.of(1.0, 2.5, -3.5),
                true,
                "");
    }
}
