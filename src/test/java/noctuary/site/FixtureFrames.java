package noctuary.site;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import noctuary.fits.FrameKind;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameReport.Spread;
import noctuary.measure.FrameSheet;
import noctuary.measure.Measurement;
import noctuary.stars.Background;
import noctuary.stars.Star;
import noctuary.stars.StarField;
import noctuary.stars.Zone;

/** Frames of the fixture, with numbers that drift as a night's do. */
final class FixtureFrames {
    static final int WIDTH = 5120;
    static final int HEIGHT = 3840;

    private FixtureFrames() {}

    static List<FrameSheet> night(String night, int count, int seconds, String filter, double fwhm, double scale) {
        Random random = new Random(night.hashCode());
        Instant start = LocalDate.parse(night).atTime(20, 40).toInstant(java.time.ZoneOffset.UTC);
        List<FrameSheet> frames = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double drift = 1 + 0.25 * Math.pow((double) i / count, 3) + 0.04 * random.nextGaussian();
            double sky = 600 + 3 * i + 8 * random.nextGaussian();
            String name = String.format(java.util.Locale.ROOT, "lights/l_%03d.fits", i + 1);
            FrameReport report = report(
                    name, FrameReport.Kind.SINGLE, start.plusSeconds(i * (seconds + 20L)), fwhm * drift, scale, sky);
            frames.add(new FrameSheet(
                    name,
                    Path.of(Fixture.HOME, "entries", night, name),
                    FrameKind.LIGHT,
                    withExposure(report, seconds, filter),
                    measurement(FrameReport.Kind.SINGLE, List.of()),
                    i == 3 ? Optional.of("the same exposure as l_003.fits") : Optional.empty()));
        }
        return frames;
    }

    static FrameSheet stack(String name, double fwhm, double scale, int seed) {
        FrameReport report =
                report(name, FrameReport.Kind.STACK, Instant.parse("2025-01-01T00:00:00Z"), fwhm, scale, 612);
        return new FrameSheet(
                name,
                Path.of(Fixture.HOME, name),
                FrameKind.UNTOLD,
                report,
                measurement(FrameReport.Kind.STACK, stars(seed, fwhm / scale)),
                Optional.empty());
    }

    private static Measurement measurement(FrameReport.Kind kind, List<Star> stars) {
        StarField field = new StarField(
                new Background(600, 9.8, 2.1),
                stars,
                7,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        return new Measurement(
                kind,
                WIDTH,
                HEIGHT,
                List.of(new Measurement.PlaneSummary(field.background(), Optional.empty())),
                Optional.empty(),
                Optional.of(field),
                Optional.empty(),
                Optional.empty(),
                "",
                List.of());
    }

    private static List<Star> stars(int seed, double fwhmPx) {
        Random random = new Random(seed);
        List<Star> stars = new ArrayList<>();
        for (int i = 0; i < 260; i++) {
            double x = random.nextDouble() * WIDTH;
            double y = random.nextDouble() * HEIGHT;
            double dx = x / WIDTH - 0.5;
            double dy = y / HEIGHT - 0.5;
            double out = Math.hypot(dx, dy);
            double ellipticity = 0.03 + 0.3 * out * out + 0.01 * random.nextGaussian();
            stars.add(new Star(
                    x,
                    y,
                    50_000 / (1 + i),
                    fwhmPx * (1 + 0.3 * out * out),
                    Math.abs(ellipticity),
                    Math.toDegrees(Math.atan(dy / dx)),
                    fwhmPx * 0.6,
                    60,
                    4000,
                    i % 40 == 39 ? Set.of(Star.Flag.BLENDED) : Set.of()));
        }
        return stars;
    }

    private static FrameReport report(
            String name, FrameReport.Kind kind, Instant taken, double fwhm, double scale, double sky) {
        FrameReport.Stars stars = new FrameReport.Stars(
                512,
                412,
                7,
                spread(fwhm / scale),
                spread(fwhm),
                spread(0.08),
                spread(fwhm / scale * 0.6),
                new FrameReport.Middle(OptionalDouble.of(3.2)));
        List<Zone> zones = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            double out = Math.hypot(i / 3 - 1, i % 3 - 1);
            boolean few = i == 8;
            zones.add(new Zone(
                    i / 3,
                    i % 3,
                    few ? 2 : 40 + i,
                    few ? OptionalDouble.empty() : OptionalDouble.of(fwhm / scale * (1 + 0.06 * out)),
                    few ? OptionalDouble.empty() : OptionalDouble.of(0.04 + 0.04 * out),
                    few ? OptionalDouble.empty() : OptionalDouble.of(-40 + 10 * i)));
        }
        return new FrameReport(
                name,
                kind,
                OptionalInt.of(WIDTH),
                OptionalInt.of(HEIGHT),
                OptionalInt.of(1),
                Optional.empty(),
                Optional.of("NGC 6888"),
                Optional.of(taken),
                OptionalDouble.of(120),
                OptionalInt.empty(),
                Optional.of("dual-band"),
                OptionalDouble.empty(),
                OptionalDouble.of(-10),
                Optional.of(new FrameReport.Scale(scale, "wcs")),
                Optional.of(new FrameReport.Field(scale * WIDTH / 3600, scale * HEIGHT / 3600)),
                Optional.of(new FrameReport.Sky(sky, 9.8, OptionalDouble.of(2.1))),
                Optional.of(stars),
                zones,
                Optional.empty(),
                Optional.of(new FrameReport.Blemishes(
                        OptionalDouble.of(14),
                        OptionalDouble.of(0),
                        OptionalDouble.of(0.4),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0),
                        OptionalDouble.of(0.01))),
                List.of());
    }

    private static FrameReport withExposure(FrameReport r, double seconds, String filter) {
        return new FrameReport(
                r.file(),
                r.kind(),
                r.width(),
                r.height(),
                r.planes(),
                r.mosaic(),
                r.object(),
                r.taken(),
                OptionalDouble.of(seconds),
                r.exposures(),
                Optional.of(filter),
                r.gain(),
                r.sensorTemperatureC(),
                r.imageScale(),
                r.field(),
                r.background(),
                r.stars(),
                r.zones(),
                r.noise(),
                r.defects(),
                r.problems());
    }

    private static Spread spread(double median) {
        return new Spread(OptionalDouble.of(median), OptionalDouble.of(median * 0.9), OptionalDouble.of(median * 1.15));
    }
}
