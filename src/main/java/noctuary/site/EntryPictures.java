package noctuary.site;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.measure.VersionSheet;
import noctuary.noise.NoiseReport;
import noctuary.site.page.EntryPage;
import noctuary.site.page.Markup;
import noctuary.site.page.Plate;
import noctuary.stars.Zone;

/** Pictures, star shapes and versions on an entry's page. */
final class EntryPictures {
    private static final String[] ROWS = {"bottom", "middle", "top"};
    private static final String[] COLUMNS = {"left", "centre", "right"};

    private final EntrySheet sheet;
    private final Plates plates;
    private final Optional<String> face;
    private final Map<String, VersionSheet> compared = new HashMap<>();
    private final VersionEffects effects;

    EntryPictures(Ledger ledger, Address here, EntrySheet sheet) {
        this.sheet = sheet;
        this.plates = new Plates(ledger, here);
        this.face = plates.face(sheet);
        this.effects = new VersionEffects(here, ledger.discretion());
        ledger.versions(sheet).forEach(v -> compared.put(v.version().name(), v));
    }

    /** The finished picture, else the stack with its stars; null without any. */
    Plate hero() {
        return face.map(name -> plates.plate(sheet, name, isStack(name) ? overlay() : Markup.NONE))
                .orElse(null);
    }

    String heroCaption() {
        return face.map(name -> isStack(name) ? "Linear data, stretched for viewing." : "Version “" + name + "”.")
                .orElse("");
    }

    /** Null when no file was measured. */
    EntryPage.Stars stars() {
        if (sheet.shown().isEmpty()) {
            return null;
        }
        FrameSheet shown = sheet.shown().get();
        FieldCharts charts = new FieldCharts(shown);
        boolean heroIsStack = face.filter(EntryPictures::isStack).isPresent();
        List<Zone> zones = shown.report().zones();
        return new EntryPage.Stars(
                heroIsStack ? null : plates.plate(sheet, Plates.STACK, overlay()),
                charts.whiskers(),
                charts.zones(),
                zones.stream().map(z -> zone(z, sky(shown.report(), z))).toList(),
                shown.report().stars().map(EntryPictures::summary).orElse(""));
    }

    List<EntryPage.VersionPart> versions() {
        return sheet.entry().versions().stream().map(this::version).toList();
    }

    private EntryPage.VersionPart version(Entry.Version version) {
        List<EntryPage.Step> steps = version.steps().stream()
                .map(step -> new EntryPage.Step(step.choice(), step.setting()))
                .toList();
        boolean alone =
                shownVersions() == 1 && face.filter(version.name()::equals).isPresent();
        Plate plate = alone ? null : plates.plate(sheet, version.name(), Markup.NONE);
        VersionSheet sheetOf = compared.get(version.name());
        return new EntryPage.VersionPart(
                version.name(), version.from(), steps, plate, sheetOf == null ? null : effects.of(sheetOf));
    }

    /** A single version is the page's first picture already; several stand side by side. */
    private long shownVersions() {
        return sheet.entry().versions().stream()
                .filter(version -> plates.plate(sheet, version.name(), Markup.NONE) != null)
                .count();
    }

    private Markup overlay() {
        return sheet.shown()
                .map(shown -> new FieldCharts(shown).overlay("measured"))
                .orElse(Markup.NONE);
    }

    private static boolean isStack(String name) {
        return name.equals(Plates.STACK);
    }

    private static String summary(FrameReport.Stars stars) {
        return Numerals.count(stars.found(), "star", "stars") + " found, " + stars.measured() + " measured, "
                + stars.saturated() + " saturated.";
    }

    private static Optional<NoiseReport.Zone> sky(FrameReport report, Zone zone) {
        return report.noise().stream()
                .flatMap(noise -> noise.zones().stream())
                .filter(z -> z.row() == zone.row() && z.column() == zone.column())
                .findFirst();
    }

    private static EntryPage.ZoneRow zone(Zone zone, Optional<NoiseReport.Zone> sky) {
        return new EntryPage.ZoneRow(
                ROWS[zone.row()] + " " + COLUMNS[zone.column()],
                zone.stars(),
                Numerals.fixed(zone.fwhmPx(), 2),
                Numerals.fixed(zone.ellipticity(), 3),
                Numerals.fixed(zone.angleDeg(), 0),
                sky.map(z -> Numerals.fixed(z.level(), 1)).orElse(""),
                sky.map(z -> Numerals.fixed(z.sigma(), 2)).orElse(""));
    }
}
