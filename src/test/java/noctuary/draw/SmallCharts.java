package noctuary.draw;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One chart of each kind, small enough to be read as text. */
final class SmallCharts {
    private static final double NAN = Double.NaN;
    private static final LocalDate DAY = LocalDate.of(2025, 6, 14);
    private static final LocalDateTime TIME = DAY.atTime(23, 10);

    private SmallCharts() {}

    static Map<String, Chart> all() {
        Map<String, Chart> charts = new LinkedHashMap<>();
        charts.put(
                "months",
                new MonthBars(
                        "Exposure by month",
                        "Exposure",
                        Samples.RIGS,
                        List.of(
                                new MonthBars.Hours(YearMonth.of(2024, 12), Samples.RIGS.get(0), 4.5),
                                new MonthBars.Hours(YearMonth.of(2024, 12), Samples.RIGS.get(1), 2),
                                new MonthBars.Hours(YearMonth.of(2025, 2), Samples.RIGS.get(1), 11.2))));
        charts.put("trend", trend());
        charts.put("spark", new Sparkline("FWHM", "px", List.of(3.1, 2.8, NAN, 3.3, 2.6)));
        charts.put("whiskers", new StarWhiskers("Star shapes", 3000, 2000, stars()));
        charts.put("overlay", new StarOverlay("The brightest stars", 3000, 2000, true, stars()));
        charts.put(
                "zones",
                new ZoneMap(
                        "Zones",
                        3000,
                        2000,
                        "px",
                        List.of(
                                new ZoneMap.Zone(0, 0, 3, NAN, NAN, NAN),
                                new ZoneMap.Zone(1, 1, 31, 2.9, 0.04, 12),
                                new ZoneMap.Zone(2, 2, 28, 3.4, 0.18, 36))));
        charts.put("course", course());
        charts.put("growth", growth());
        charts.put(
                "calendar",
                new NightCalendar(
                        "Nights of 2025",
                        2025,
                        List.of(
                                new NightCalendar.Night(DAY, 3.5, 0.75, "NGC 6888", "entries/c/index.html"),
                                new NightCalendar.Night(DAY.plusDays(1), NAN, 0, "NGC 7000", null)),
                        List.of(LocalDate.of(2025, 6, 11))));
        charts.put("train", Samples.train());
        charts.put("intervals", Samples.intervals());
        charts.put("filters", Samples.filters());
        charts.put("strength", Samples.strength());
        charts.put("framing", Samples.framing());
        charts.put("noise-by-time", noiseByTime());
        return charts;
    }

    /** Sixteen exposures of five minutes, with something that stays. */
    static NoiseByTime noiseByTime() {
        return new NoiseByTime(
                "Noise against time",
                "noise of a pixel, counts",
                List.of(
                        new NoiseByTime.Point(600, 9.95, 9.84),
                        new NoiseByTime.Point(1200, 7.2, 7.01),
                        new NoiseByTime.Point(2400, 5.39, 4.93),
                        new NoiseByTime.Point(4800, 4.2, 3.5)));
    }

    private static Trend trend() {
        return new Trend(
                "Sharpness over time",
                "Star FWHM",
                "arcsec",
                Samples.RIGS,
                List.of(
                        new Trend.Point(DAY, 3.6, 3.1, 4.4, Samples.RIGS.get(0), "NGC 6888", "entries/a/index.html"),
                        new Trend.Point(DAY.plusDays(60), 3.2, NAN, NAN, Samples.RIGS.get(0), "M 101", null),
                        new Trend.Point(DAY.plusDays(130), 2.5, 2.3, 2.9, Samples.RIGS.get(1), "M 31", null)),
                List.of(new Trend.Change(DAY.plusDays(100), "Heron, the long tube")));
    }

    private static List<StarShape> stars() {
        return List.of(
                new StarShape(1500, 1000, 2.8, 0.03, 10),
                new StarShape(200, 150, 3.4, 0.21, 33),
                new StarShape(2800, 1850, 3.5, 0.19, 34));
    }

    private static NightCourse course() {
        return new NightCourse(
                "The night's course",
                "UTC",
                List.of(new NightCourse.Panel(
                        "FWHM",
                        "arcsec",
                        List.of(
                                new NightCourse.Sample(TIME, 2.9),
                                new NightCourse.Sample(TIME.plusMinutes(5), 3.0),
                                new NightCourse.Sample(TIME.plusMinutes(10), 3.2),
                                new NightCourse.Sample(TIME.plusMinutes(55), 2.7),
                                new NightCourse.Sample(TIME.plusMinutes(60), 2.8)))),
                List.of(new NightCourse.Event(TIME.plusMinutes(52), "refocused")));
    }

    private static ExposureGrowth growth() {
        return new ExposureGrowth(
                "Exposure on NGC 6888",
                10,
                Samples.RIGS,
                List.of(
                        new ExposureGrowth.Attempt(DAY, 1.6, Samples.RIGS.get(0), "First", "entries/a/index.html"),
                        new ExposureGrowth.Attempt(DAY.plusDays(90), 4.2, Samples.RIGS.get(1), "Second", null)));
    }
}
