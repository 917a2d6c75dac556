package noctuary.site;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.advice.Advice;
import noctuary.entry.Entry;
import noctuary.entry.Journal;
import noctuary.entry.Settings;
import noctuary.entry.Site;
import noctuary.entry.Typed;
import noctuary.fact.Fact;
import noctuary.fact.Origin;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.FrameSheet;
import noctuary.measure.TargetSheet;
import noctuary.measure.VersionSheet;
import noctuary.review.Review;
import noctuary.review.Reviews;

/**
 * A small journal by hand: five entries, two rigs, one site, facts of every origin, some missing, some disputed, one
 * entry full of things that must do nothing. Coordinates and paths are planted to be looked for.
 */
final class Fixture {
    static final String HOSTILE = "<script>alert(1)</script>";
    static final String HOME = "/home/planteduser/pictures/journal";
    static final List<String> PLANTED = List.of("44.31234", "9.21234", "planteduser", "/home/", "C:\\Users");

    private Fixture() {}

    static SiteContent content(boolean published) {
        return content(settings(published));
    }

    static Settings settings(boolean published) {
        return new Settings(
                "Nights above Averil",
                Optional.of("M."),
                Optional.of("terrace"),
                Optional.of("heron"),
                Optional.empty(),
                Map.of("main", Path.of("/home/planteduser/frames")),
                new Settings.Publish(published, published));
    }

    static SiteContent content(Settings settings) {
        List<EntrySheet> sheets = List.of(odd(), dumbbell(), longTube(), shortTube(), pinwheel());
        Journal journal = new Journal(
                Path.of(HOME),
                settings,
                new LinkedHashMap<>(FixtureRigs.notes()),
                Map.of("terrace", terrace()),
                sheets.stream().map(EntrySheet::entry).toList(),
                List.of(Problem.fault(
                        "entries/rigs/wren.md", "line 7, key reducer", "“0,8x” is not a number", "write 0.8")),
                Map.of());
        return new SiteContent(
                journal,
                sheets,
                FixtureRigs.sheets(),
                targets(),
                reviews(journal, sheets),
                Advice.of(journal, sheets, FixtureRigs.sheets(), Map.of()),
                FixturePictures.all(),
                FixtureVersions.all(sheets),
                FixtureSkies.all(),
                Map.of());
    }

    private static List<Review> reviews(Journal journal, List<EntrySheet> sheets) {
        Map<String, List<VersionSheet>> versions = FixtureVersions.all(sheets);
        return Reviews.of(
                        journal,
                        sheets,
                        FixtureRigs.sheets(),
                        sheet -> versions.getOrDefault(sheet.entry().slug(), List.of()))
                .all();
    }

    private static Site terrace() {
        return new Site(
                "terrace",
                "entries/sites/terrace.md",
                "Terrace",
                OptionalDouble.of(44.31234),
                OptionalDouble.of(9.21234),
                OptionalDouble.of(100),
                Optional.of(ZoneId.of("Europe/Rome")),
                "",
                List.of());
    }

    private static List<TargetSheet> targets() {
        return List.of(
                new TargetSheet("m-101", "M 101", "pinwheel", List.of(first("pinwheel", 180))),
                new TargetSheet(
                        "ngc-6888",
                        "NGC 6888",
                        "long-tube",
                        List.of(
                                new TargetSheet.Attempt(
                                        "short-tube",
                                        84,
                                        OptionalDouble.of(0.11),
                                        OptionalDouble.of(1.5043),
                                        OptionalDouble.of(12.4),
                                        false),
                                first("long-tube", 140))),
                new TargetSheet("m-27", "M 27", "dumbbell", List.of(first("dumbbell", 220))),
                new TargetSheet("script", HOSTILE, "odd", List.of(first("odd", 0))));
    }

    private static TargetSheet.Attempt first(String slug, int matched) {
        return new TargetSheet.Attempt(
                slug, matched, OptionalDouble.of(0), OptionalDouble.of(1), OptionalDouble.of(0), false);
    }

    private static EntrySheet pinwheel() {
        String html = "<p>First light of the Wren. Guiding lost the star twice when the neighbour’s lamp came on.</p>"
                + "<h1>What went wrong</h1><p>The USB cable: <em>wrong port</em>, three quarters of an hour gone.</p>"
                + "<table><thead><tr><th>step</th><th>minutes</th></tr></thead><tbody><tr><td>polar alignment</td>"
                + "<td>20</td></tr></tbody></table>";
        EntryDraft draft = new EntryDraft("pinwheel", "First light: the pinwheel", "M 101", "wren", "2025-05-02", html);
        draft.lost = List.of(new Entry.Lost(45, "cabling", "wrong port"), new Entry.Lost(20, "cloud", ""));
        draft.lessons = List.of(new Entry.Lesson("pinwheel#cabling", "cabling", "label both ends of every cable"));
        return draft.sheet(FixtureFrames.night("2025-05-02", 20, 180, "none", 3.1, 1.96), 3.1, 1.96, List.of());
    }

    private static EntrySheet shortTube() {
        EntryDraft draft = new EntryDraft(
                "short-tube",
                "The crescent with the short tube",
                "NGC 6888",
                "wren",
                "2025-05-17",
                "<p>The same field as planned for the long tube, to compare.</p>");
        return draft.sheet(FixtureFrames.night("2025-05-17", 30, 120, "dual-band", 3.4, 1.96), 3.4, 1.96, List.of());
    }

    private static EntrySheet longTube() {
        String html = "<p>Same terrace, same filter, half as long again the focal length. Stars are rounder than I had "
                + "hoped, and the shell shows its inner arc for the first time.</p><p>Focus drifted with the cold: "
                + "see the night’s course after one o’clock. <a href=\"../short-tube/index.html\">Compare the short "
                + "tube</a>.</p><ul class=\"contains-task-list\"><li class=\"task-list-item\"><input type=\"checkbox\" "
                + "disabled aria-label=\"to do\">refocus every hour</li></ul>";
        EntryDraft draft = new EntryDraft(
                "long-tube", "The crescent, longer tube, same terrace", "NGC 6888", "heron", "2025-06-14", html);
        draft.changes = List.of("56.2 mm instead of 55.0 mm behind the corrector");
        draft.lessons = List.of(new Entry.Lesson("long-tube#focus", "focus", "refocus after every 3 degrees"));
        draft.closes = List.of("pinwheel#cabling");
        draft.versions = List.of(
                new Entry.Version(
                        "gentle",
                        Optional.of(Path.of(HOME, "entries/long-tube/gentle.tif")),
                        "stack",
                        List.of(
                                new Entry.Step("black point", "0.02"),
                                new Entry.Step("colour balance", "background"),
                                new Entry.Step("stretch", "asinh 12"),
                                new Entry.Step("noise reduction", "0.3"))),
                new Entry.Version(
                        "heavy", Optional.empty(), "gentle", List.of(new Entry.Step("noise reduction", "0.9"))));
        Problem problem = Problem.notice(
                HOME + "/entries/long-tube/lights/l_007.fits",
                "card FOCALLEN",
                "the header in " + HOME + "/entries/long-tube/lights says 700 mm, the sky says 713.2 mm",
                "correct the focal length in C:\\Users\\planteduser\\capture\\profile.ini");
        List<FrameSheet> frames = FixtureFrames.night("2025-06-14", 48, 120, "dual-band", 2.7, 1.303);
        return draft.sheet(frames, 2.7, 1.303, List.of(problem));
    }

    private static EntrySheet dumbbell() {
        EntryDraft draft = new EntryDraft(
                "dumbbell",
                "Two nights on the dumbbell",
                "M 27",
                "heron",
                "2025-08-20",
                "<p>With the new spacer. Corners are tight now.</p>");
        List<FrameSheet> frames = new ArrayList<>(FixtureFrames.night("2025-08-20", 30, 180, "H-alpha", 2.4, 1.303));
        frames.addAll(FixtureFrames.night("2025-08-21", 26, 180, "O III", 2.6, 1.303));
        draft.nights = List.of(LocalDate.parse("2025-08-20"), LocalDate.parse("2025-08-21"));
        return draft.sheet(frames, 2.45, 1.303, List.of());
    }

    /** Frames gone, rig unknown, names that want to be code. */
    private static EntrySheet odd() {
        EntryDraft draft =
                new EntryDraft("odd", "Odd \"><img src=x onerror=alert(2)>", HOSTILE, "", "2025-09-01", "<p>Gone.</p>");
        draft.exposure = List.of(FixtureRigs.typed(
                new Entry.TypedExposure(10, new BigDecimal("60"), "dual"), "exposure", "{count: 10, seconds: 60}"));
        EntrySheet bare = draft.sheet(List.of(), 0, 0, List.of());
        Map<Figure, Fact<Quantity>> figures = new LinkedHashMap<>();
        figures.put(
                Figure.EXPOSURE,
                Fact.of(
                        Quantity.of(600, Unit.SECOND),
                        new Origin.Typed("entries/odd.md", 9, "exposure", "10 x 60 s " + HOSTILE)));
        figures.put(Figure.FWHM_ARCSEC, Fact.missing("there is no frame to measure"));
        return EntrySheet.of(
                bare.entry(),
                Fact.of(HOSTILE, new Origin.Header("lights/a.fits", "OBJECT", HOSTILE)),
                bare.night(),
                bare.nights(),
                Map.of("\" onmouseover=\"alert(3)", figures.get(Figure.EXPOSURE)),
                figures,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(Problem.fault("lights/a.fits", "", "cannot be read: " + HOSTILE, "javascript:alert(4)")));
    }

    static <T> Optional<Typed<T>> typedOrEmpty(T value, boolean present, String key) {
        return present ? Optional.of(FixtureRigs.typed(value, key, value.toString())) : Optional.empty();
    }
}
