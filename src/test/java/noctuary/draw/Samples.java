package noctuary.draw;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** Invented but believable numbers for the gallery, the same at every run. */
final class Samples {
    static final List<String> RIGS = List.of("Wren, the short tube", "Heron, the long tube");

    private Samples() {}

    static MonthBars months() {
        double[] wren = {6.2, 9.8, 3.1, 0, 12.4, 14.9, 8.8, 2.0, 0, 0, 1.5, 0, 0, 0, 2.2, 0, 0, 3.0};
        double[] heron = {0, 0, 0, 0, 0, 0, 3.1, 11.2, 7.7, 4.4, 9.0, 13.6, 5.2, 0, 16.8, 12.1, 6.3, 8.0};
        List<MonthBars.Hours> hours = new ArrayList<>();
        for (int i = 0; i < wren.length; i++) {
            YearMonth month = YearMonth.of(2024, 10).plusMonths(i);
            hours.add(new MonthBars.Hours(month, RIGS.get(0), wren[i]));
            hours.add(new MonthBars.Hours(month, RIGS.get(1), heron[i]));
        }
        return new MonthBars("Exposure by month", "Exposure", RIGS, hours);
    }

    static Trend trend() {
        Random random = new Random(7);
        List<Trend.Point> points = new ArrayList<>();
        LocalDate date = LocalDate.of(2024, 10, 4);
        for (int i = 0; i < 34; i++) {
            boolean heron = i > 14 && i % 6 != 0;
            double centre = (heron ? i > 22 ? 2.4 : 2.9 : 3.6) * Math.exp(0.14 * random.nextGaussian());
            double spread = centre * (0.08 + 0.1 * random.nextDouble());
            String label = "Entry " + (i + 1);
            points.add(new Trend.Point(
                    date,
                    centre,
                    centre - spread,
                    centre + 1.4 * spread,
                    RIGS.get(heron ? 1 : 0),
                    label,
                    "entries/e" + i + "/index.html"));
            date = date.plusDays(4 + random.nextInt(22));
        }
        return new Trend("Sharpness over time", "Star FWHM", "arcsec", RIGS, points, changes());
    }

    private static List<Trend.Change> changes() {
        return List.of(
                new Trend.Change(LocalDate.of(2025, 5, 6), "Heron, the long tube"),
                new Trend.Change(LocalDate.of(2025, 8, 2), "spacer 56.2 mm instead of 55.0 mm"),
                new Trend.Change(LocalDate.of(2025, 9, 14), "from the terrace to the meadow"));
    }

    static Sparkline spark() {
        Random random = new Random(3);
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            values.add(i == 9 ? Double.NaN : 3.2 - 0.03 * i + 0.3 * random.nextGaussian());
        }
        return new Sparkline("FWHM of the last 24 entries", "arcsec", values);
    }

    /** Round in the middle, drawn outward at the corners as behind a corrector that sits too close. */
    static List<StarShape> stars(int count) {
        Random random = new Random(11);
        List<StarShape> stars = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = random.nextDouble() * 5120;
            double y = random.nextDouble() * 3840;
            double dx = (x - 2560) / 3200;
            double dy = (y - 1920) / 3200;
            double r2 = dx * dx + dy * dy;
            double ellipticity = Math.abs(0.03 + 0.22 * r2 + 0.015 * random.nextGaussian());
            double angle = Math.toDegrees(Math.atan2(dy, dx)) + 8 * random.nextGaussian();
            double fwhm = 2.9 * (1 + 0.3 * r2) * Math.exp(0.05 * random.nextGaussian());
            stars.add(new StarShape(x, y, fwhm, ellipticity, angle));
        }
        return stars;
    }

    static StarWhiskers whiskers() {
        return new StarWhiskers("Star shapes across the field", 5120, 3840, stars(640));
    }

    static StarOverlay overlay() {
        return new StarOverlay("The brightest stars", 5120, 3840, true, stars(640));
    }

    static ZoneMap zones() {
        List<ZoneMap.Zone> zones = new ArrayList<>();
        double[] fwhm = {3.41, 3.05, 3.62, 3.12, 2.91, 3.2, Double.NaN, 3.08, 3.5};
        double[] angle = {37, 90, -37, 0, 20, 0, 0, 90, 37};
        for (int i = 0; i < 9; i++) {
            boolean corner = i % 2 == 0 && i != 4;
            int stars = Double.isNaN(fwhm[i]) ? 4 : 40 + 7 * i;
            zones.add(new ZoneMap.Zone(i / 3, i % 3, stars, fwhm[i], corner ? 0.17 : 0.05, angle[i]));
        }
        return new ZoneMap("Star shapes by zone", 5120, 3840, "px", zones);
    }

    static NightCourse course() {
        Random random = new Random(5);
        List<NightCourse.Sample> fwhm = new ArrayList<>();
        List<NightCourse.Sample> ellipticity = new ArrayList<>();
        List<NightCourse.Sample> sky = new ArrayList<>();
        List<NightCourse.Sample> count = new ArrayList<>();
        LocalDateTime time = LocalDateTime.of(2025, 6, 14, 22, 41);
        for (int i = 0; i < 58; i++) {
            double drift = i < 30 ? 0.02 * i : 0.02 * (i - 30);
            fwhm.add(new NightCourse.Sample(time, 2.6 + drift + 0.12 * random.nextGaussian()));
            ellipticity.add(new NightCourse.Sample(time, Math.abs(0.07 + 0.02 * random.nextGaussian())));
            sky.add(new NightCourse.Sample(time, 1240 + 3.4 * (i - 24) * (i - 24) / 10.0 + 6 * random.nextGaussian()));
            count.add(new NightCourse.Sample(time, Math.round(820 - 90 * drift + 20 * random.nextGaussian())));
            time = time.plusMinutes(i == 29 ? 47 : 4);
        }
        return new NightCourse(
                "The night's course",
                "local time, Europe/Rome",
                List.of(
                        new NightCourse.Panel("FWHM", "arcsec", fwhm),
                        new NightCourse.Panel("Ellipticity", "", ellipticity),
                        new NightCourse.Panel("Background", "ADU", sky),
                        new NightCourse.Panel("Stars", "measured", count)),
                List.of(
                        new NightCourse.Event(LocalDateTime.of(2025, 6, 15, 1, 26), "refocused"),
                        new NightCourse.Event(LocalDateTime.of(2025, 6, 15, 2, 30), "turned the mount over")));
    }

    static ExposureGrowth growth() {
        double[] hours = {1.6, 2.4, 0.7, 3.1, 1.9, 3.7};
        int[] days = {0, 24, 27, 118, 391, 402};
        List<ExposureGrowth.Attempt> attempts = IntStream.range(0, hours.length)
                .mapToObj(i -> new ExposureGrowth.Attempt(
                        LocalDate.of(2024, 10, 8).plusDays(days[i]),
                        hours[i],
                        RIGS.get(i < 4 ? 0 : 1),
                        "Attempt " + (i + 1),
                        "entries/a" + i + "/index.html"))
                .toList();
        return new ExposureGrowth("Exposure on NGC 7000", 20, RIGS, attempts);
    }

    static NightCalendar calendar() {
        Random random = new Random(19);
        List<NightCalendar.Night> nights = new ArrayList<>();
        LocalDate date = LocalDate.of(2025, 1, 3);
        while (date.getYear() == 2025) {
            double used = random.nextInt(12) == 0 ? Double.NaN : 0.4 + 5.2 * random.nextDouble();
            double lost = random.nextInt(3) == 0 ? 0.3 + 1.8 * random.nextDouble() : 0;
            nights.add(new NightCalendar.Night(date, used, lost, "NGC 6888", "entries/n/index.html"));
            date = date.plusDays(1 + random.nextInt(random.nextBoolean() ? 3 : 19));
        }
        List<LocalDate> moons = new ArrayList<>();
        for (int i = 0; i < 13; i++) {
            moons.add(LocalDate.of(2025, 1, 13).plusDays(Math.round(29.530588 * i)));
        }
        return new NightCalendar("Nights of 2025", 2025, nights, moons);
    }

    static TrainDrawing train() {
        return new TrainDrawing(
                "The train of Heron",
                List.of(
                        new TrainDrawing.Part("corrector", Double.NaN, 0, 48),
                        new TrainDrawing.Part("spacer", 37.5, 0, 48),
                        new TrainDrawing.Part("filter", Double.NaN, 2, Double.NaN),
                        new TrainDrawing.Part("camera", 17.5, 0, 42)),
                List.of(
                        new TrainDrawing.Joint(0, "M48×0.75", TrainDrawing.Mate.FITS),
                        new TrainDrawing.Joint(1, "M42×0.75", TrainDrawing.Mate.FITS)),
                55.68,
                55.0,
                0.5,
                21.1);
    }

    static TrainDrawing brokenTrain() {
        return new TrainDrawing(
                "A train that does not fit",
                List.of(
                        new TrainDrawing.Part("reducer 0.8", Double.NaN, 0, 54),
                        new TrainDrawing.Part("adapter", 3, 0, 54),
                        new TrainDrawing.Part("rotator", Double.NaN, 0, 48),
                        new TrainDrawing.Part("spacer ring", 5, 0, 48),
                        new TrainDrawing.Part("filter drawer", 21, 3, 48),
                        new TrainDrawing.Part("shim", 0.5, 0, 48),
                        new TrainDrawing.Part("camera", 17.5, 0, 42)),
                List.of(
                        new TrainDrawing.Joint(0, "M54×0.75", TrainDrawing.Mate.FITS),
                        new TrainDrawing.Joint(1, "M48×0.75", TrainDrawing.Mate.FITS),
                        new TrainDrawing.Joint(2, "M48×0.75", TrainDrawing.Mate.UNKNOWN),
                        new TrainDrawing.Joint(3, "M48×0.75", TrainDrawing.Mate.FITS),
                        new TrainDrawing.Joint(5, "M48×0.75 male, M42×0.75 female", TrainDrawing.Mate.MISFIT)),
                56,
                Double.NaN,
                0.4,
                Double.NaN);
    }

    static IntervalPlot intervals() {
        return new IntervalPlot(
                "Heron against Wren",
                "change, %, with 95 % interval",
                "smaller",
                "larger",
                List.of(
                        new IntervalPlot.Row("Star FWHM", -17.4, -26, -8.1, IntervalPlot.Tone.BETTER, "better"),
                        new IntervalPlot.Row("Ellipticity", 6.2, -11, 24, IntervalPlot.Tone.OPEN, "no difference seen"),
                        new IntervalPlot.Row("Background noise", 14.8, 3.2, 27, IntervalPlot.Tone.WORSE, "worse"),
                        new IntervalPlot.Row(
                                "Guiding RMS", -4, Double.NaN, Double.NaN, IntervalPlot.Tone.OPEN, "too few nights"),
                        new IntervalPlot.Row(
                                "Corner excess",
                                Double.NaN,
                                Double.NaN,
                                Double.NaN,
                                IntervalPlot.Tone.OPEN,
                                "not measured")));
    }

    static FilterShare filters() {
        return new FilterShare(
                "Exposure by filter",
                List.of("L", "R", "G", "B", "Ha", "OIII"),
                List.of(
                        new FilterShare.Share("Ha", 5.6 * 3600),
                        new FilterShare.Share("OIII", 4.1 * 3600),
                        new FilterShare.Share("R", 1800),
                        new FilterShare.Share("G", 2100),
                        new FilterShare.Share("B", 1700)));
    }

    static Framing framing() {
        return new Framing(
                "The field about M 31",
                "M 31",
                190,
                60,
                RIGS,
                List.of(new Framing.Field(RIGS.get(0), 151, 101), new Framing.Field(RIGS.get(1), 77, 58)));
    }

    static StrengthPlot strength() {
        double[] settings = {0.2, 0.25, 0.3, 0.3, 0.35, 0.5, 0.9};
        double[] noise = {30, 41, 32, 27, 17, 55, 61};
        double[] stars = {0, 0, 0, 1, 0, 26, 88};
        List<String> series = List.of("noise taken", "faint stars lost");
        List<StrengthPlot.Point> points = new ArrayList<>();
        for (int i = 0; i < settings.length; i++) {
            String href = "entries/e" + i + "/index.html";
            points.add(new StrengthPlot.Point(settings[i], noise[i], series.get(0), "Entry " + i, href));
            points.add(new StrengthPlot.Point(settings[i], stars[i], series.get(1), "Entry " + i, href));
        }
        return new StrengthPlot("What noise reduction took", "setting of noise reduction", "taken, %", series, points);
    }
}
