package noctuary.site;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Entry;
import noctuary.entry.Typed;
import noctuary.fact.Fact;
import noctuary.fact.Origin;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.FrameSheet;

/** An entry of the fixture in the making. */
final class EntryDraft {
    private final String slug;
    private final String title;
    private final String target;
    private final String rig;
    private final LocalDate night;
    private final String html;
    List<LocalDate> nights;
    List<Entry.Lost> lost = List.of();
    List<String> changes = List.of();
    List<Entry.Version> versions = List.of();
    List<Entry.Lesson> lessons = List.of();
    List<String> closes = List.of();
    List<Typed<Entry.TypedExposure>> exposure = List.of();

    EntryDraft(String slug, String title, String target, String rig, String night, String html) {
        this.slug = slug;
        this.title = title;
        this.target = target;
        this.rig = rig;
        this.night = LocalDate.parse(night);
        this.nights = List.of(this.night);
        this.html = html;
    }

    EntrySheet sheet(List<FrameSheet> frames, double fwhmArcsec, double scale, List<Problem> problems) {
        Optional<FrameSheet> stack = frames.isEmpty()
                ? Optional.empty()
                : Optional.of(FixtureFrames.stack(slug + ".fits", fwhmArcsec, scale, slug.hashCode()));
        Origin object = new Origin.Header("lights/l_001.fits", "OBJECT", target);
        return EntrySheet.of(
                entry(frames),
                Fact.of(target, object),
                Fact.of(night, new Origin.Header("lights/l_001.fits", "DATE-OBS", night + "T22:10:00")),
                nights,
                byFilter(frames),
                frames.isEmpty() ? new EnumMap<>(Figure.class) : figures(frames, fwhmArcsec, scale),
                frames,
                stack,
                stack,
                List.of(),
                problems);
    }

    private Entry entry(List<FrameSheet> frames) {
        return new Entry(
                slug,
                "entries/" + slug + "/entry.md",
                Path.of(Fixture.HOME, "entries", slug),
                FixtureRigs.typed(title, "title", title),
                Optional.empty(),
                Fixture.typedOrEmpty(rig, !rig.isEmpty(), "rig"),
                Fixture.typedOrEmpty("terrace", true, "site"),
                Optional.empty(),
                frames.stream().map(FrameSheet::path).toList(),
                Optional.empty(),
                exposure,
                Optional.empty(),
                lost,
                changes.stream().map(c -> FixtureRigs.typed(c, "changes", c)).toList(),
                versions,
                lessons,
                closes,
                html,
                List.of());
    }

    private static Map<String, Fact<Quantity>> byFilter(List<FrameSheet> frames) {
        Map<String, Double> seconds = new LinkedHashMap<>();
        frames.stream()
                .filter(f -> f.notCounted().isEmpty())
                .forEach(f -> seconds.merge(
                        f.report().filter().orElse(""),
                        f.report().exposureSeconds().orElse(0),
                        Double::sum));
        Map<String, Fact<Quantity>> facts = new LinkedHashMap<>();
        seconds.forEach((filter, s) -> facts.put(
                filter,
                Fact.of(
                        Quantity.of(s, Unit.SECOND),
                        new Origin.Derived("sum over the counted frames", "exposure", List.of()))));
        return facts;
    }

    private static Map<Figure, Fact<Quantity>> figures(List<FrameSheet> frames, double fwhm, double scale) {
        String file = frames.get(0).name();
        double seconds = frames.stream()
                .filter(f -> f.notCounted().isEmpty())
                .mapToDouble(f -> f.report().exposureSeconds().orElse(0))
                .sum();
        Origin pitch = new Origin.Header(file, "XPIXSZ", "3.3");
        Origin focal = new Origin.Typed("entries/rigs/heron.md", 4, "focal length", "750 mm");
        Origin fromRig = new Origin.Derived(
                "206.265 × pixel pitch / focal length",
                "image-scale",
                List.of(
                        new Origin.Input("pixel pitch", "3.3 µm", pitch),
                        new Origin.Input(
                                "focal length",
                                "712.5 mm",
                                new Origin.Derived(
                                        "focal length × reducer",
                                        "focal-length",
                                        List.of(new Origin.Input("focal length", "750 mm", focal))))));
        Origin fromSky = new Origin.Header(file, "CD1_1, CD1_2, CD2_1, CD2_2", "-3.62e-4, 0, 0, 3.62e-4");
        Map<Figure, Fact<Quantity>> figures = new LinkedHashMap<>();
        figures.put(
                Figure.EXPOSURE,
                Fact.of(
                        Quantity.of(seconds, Unit.SECOND),
                        new Origin.Derived(
                                "sum of " + frames.size() + " frames",
                                "exposure",
                                List.of(new Origin.Input(
                                        "first frame", "120 s", new Origin.Header(file, "EXPTIME", "120.0"))))));
        figures.put(
                Figure.IMAGE_SCALE,
                new Fact.Known<>(
                        new Fact.Reading<>(Quantity.of(scale, Unit.ARCSECOND_PER_PIXEL), fromSky),
                        List.of(new Fact.Reading<>(Quantity.of(scale * 1.03, Unit.ARCSECOND_PER_PIXEL), fromRig))));
        figures.put(Figure.FIELD_WIDTH, Fact.of(Quantity.of(scale * 5120 / 3600, Unit.DEGREE), fromSky));
        figures.put(Figure.FIELD_HEIGHT, Fact.of(Quantity.of(scale * 3840 / 3600, Unit.DEGREE), fromSky));
        figures.put(Figure.FOCAL_RATIO, Fact.missing("the rig does not say its aperture"));
        figures.put(Figure.FWHM_PX, measured(fwhm / scale, 0.02, Unit.PIXEL, file, "fwhm"));
        figures.put(Figure.FWHM_ARCSEC, measured(fwhm, 0.03, Unit.ARCSECOND, file, "fwhm"));
        figures.put(Figure.ELLIPTICITY, measured(0.083, 0.004, Unit.NONE, file, "ellipticity"));
        figures.put(Figure.STARS, Fact.of(Quantity.of(412, Unit.COUNT), new Origin.Measured(file, "detection")));
        figures.put(Figure.BACKGROUND_LEVEL, measured(612.4, 0.2, Unit.ADU, file, "background"));
        figures.put(Figure.BACKGROUND_NOISE, measured(9.8, 0.01, Unit.ADU, file, "background"));
        figures.put(
                Figure.SENSOR_TEMPERATURE,
                Fact.of(Quantity.of(-10, Unit.CELSIUS), new Origin.Header(file, "CCD-TEMP", "-10.0")));
        figures.put(Figure.GUIDING_RMS, Fact.missing("no guiding line in the note"));
        return figures;
    }

    private static Fact<Quantity> measured(double value, double error, Unit unit, String file, String method) {
        return Fact.of(Quantity.of(value, unit, error), new Origin.Measured(file, method));
    }
}
