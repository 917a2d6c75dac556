package noctuary.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import noctuary.entry.Journal;
import noctuary.fact.Problem;
import noctuary.keep.Memo;
import noctuary.measure.EntrySheet;
import noctuary.measure.EntrySheets;
import noctuary.measure.MeasuredFiles;
import noctuary.measure.Meter;
import noctuary.measure.RigSheet;
import noctuary.measure.RigSheets;
import noctuary.measure.SmallJournal;
import noctuary.measure.VersionSheet;
import noctuary.measure.VersionSheets;

/** A journal on disk with the rigs wren and heron (whose spacer changes on 2025-08-01) and the sites terrace and ridge. */
public final class PlantedJournal {
    private final SmallJournal journal;

    public PlantedJournal(Path root) {
        journal = new SmallJournal(root);
        file(
                "rigs/wren.md",
                "---",
                "name: Wren",
                "in use: 2024-08-20 to 2025-05-18",
                "optics: {aperture: 80 mm, focal length: 480 mm, reducer: 0.8}",
                "camera: {pixel: 3.75 µm, width: 200, height: 150}",
                "---");
        file(
                "rigs/heron.md",
                "---",
                "name: Heron",
                "in use: 2025-05-20 on",
                "optics: {aperture: 150 mm, focal length: 750 mm, reducer: 0.95}",
                "camera: {pixel: 4.6 µm, width: 200, height: 150, gain: 2 e/ADU, read noise: 5 e}",
                "train:",
                "  - {part: spacer, length: 16.5 mm}",
                "  - {part: spacer, since: 2025-08-01, length: 17.7 mm}",
                "---");
        file(
                "sites/ridge.md",
                "---",
                "name: Ridge",
                "latitude: 44.5 deg",
                "longitude: 9.5 deg",
                "time zone: Europe/Rome",
                "---");
    }

    public SmallJournal small() {
        return journal;
    }

    public Path root() {
        return journal.root();
    }

    public PlantedJournal file(String name, String... lines) {
        journal.file(name, lines);
        return this;
    }

    /** A night whose frames are gone: guiding typed, more lines of front matter at will. */
    public PlantedJournal night(String date, String rig, String site, String target, double guiding, String... more) {
        String slug = date + "-" + target.toLowerCase(Locale.ROOT).replace(" ", "");
        String front = String.join(
                "\n",
                "title: " + slug,
                "target: " + target,
                "rig: " + rig,
                "site: " + site,
                "date: " + date,
                "exposure: [{count: 60, seconds: 60}]",
                String.format(Locale.ROOT, "guiding: {rms: %.3f arcsec}", guiding));
        journal.entry(slug, (front + "\n" + String.join("\n", more)).strip().split("\n"));
        return this;
    }

    public Reviews reviews() {
        VersionSheets versions =
                new VersionSheets(new MeasuredFiles(root().resolve(".noctuary")), root().resolve(".noctuary"));
        return reviews(sheet -> versions.of(sheet.entry()));
    }

    Reviews reviews(Function<EntrySheet, List<VersionSheet>> versions) {
        Journal read = read();
        return Reviews.of(read, sheets(read), rigs(read), versions);
    }

    List<Change> changes() {
        Journal read = read();
        return Changes.of(Chronicle.of(read, sheets(read), rigs(read), Memo.NONE));
    }

    Change change(String id) {
        return changes().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    }

    private Journal read() {
        Journal read = Journal.read(root());
        if (read.problems().stream().anyMatch(Problem::isFault)) {
            throw new AssertionError(read.problems());
        }
        return read;
    }

    private static List<EntrySheet> sheets(Journal journal) {
        EntrySheets sheets = new EntrySheets(journal, Meter::measure);
        return journal.entries().stream().map(sheets::of).toList();
    }

    private static Map<String, RigSheet> rigs(Journal journal) {
        return RigSheets.of(journal, sheets(journal));
    }
}
