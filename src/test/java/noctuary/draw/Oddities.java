package noctuary.draw;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Charts of nothing, of one thing, of equal things, and with hostile words. */
final class Oddities {
    static final String HOSTILE = "</title><script>alert('x')</script>\" onload=\"x\u0000\u0008\ud800 & <b>";
    private static final LocalDate DAY = LocalDate.of(2025, 6, 14);
    private static final LocalDateTime TIME = DAY.atTime(23, 10);
    private static final double NAN = Double.NaN;

    private Oddities() {}

    /** Every kind of chart with {@code count} equal items that all bear the same words. */
    static Map<String, Chart> of(String words, int count, double value) {
        Map<String, Chart> charts = new LinkedHashMap<>();
        List<String> series = List.of(words);
        charts.put(
                "months",
                new MonthBars(
                        words, words, series, copies(count, new MonthBars.Hours(YearMonth.of(2025, 6), words, value))));
        var point = new Trend.Point(DAY, value, value, value, words, words, words);
        charts.put(
                "trend",
                new Trend(
                        words,
                        words,
                        words,
                        series,
                        copies(count, point),
                        copies(count, new Trend.Change(DAY, words))));
        charts.put("spark", new Sparkline(words, words, copies(count, value)));
        List<StarShape> stars = copies(count, new StarShape(10, 20, value, 0.1, 30));
        charts.put("whiskers", new StarWhiskers(words, 100, 80, stars));
        charts.put("overlay", new StarOverlay(words, 100, 80, false, stars));
        charts.put("zones", new ZoneMap(words, 100, 80, words, copies(count, new ZoneMap.Zone(1, 1, 9, value, 0, 0))));
        var setting = new StrengthPlot.Point(value, value, words, words, words);
        charts.put("strength", new StrengthPlot(words, words, words, series, copies(count, setting)));
        var mean = new NoiseByTime.Point(value, value, value);
        charts.put("noise-by-time", new NoiseByTime(words, words, copies(count, mean)));
        charts.putAll(timed(words, count, value));
        charts.putAll(flat(words, count, value));
        return charts;
    }

    private static Map<String, Chart> timed(String words, int count, double value) {
        var panel = new NightCourse.Panel(words, words, copies(count, new NightCourse.Sample(TIME, value)));
        var attempt = new ExposureGrowth.Attempt(DAY, value, words, words, words);
        var night = new NightCalendar.Night(DAY, value, value, words, words);
        return Map.of(
                "course",
                new NightCourse(words, words, List.of(panel), copies(count, new NightCourse.Event(TIME, words))),
                "growth",
                new ExposureGrowth(words, NAN, List.of(words), copies(count, attempt)),
                "calendar",
                new NightCalendar(words, 2025, copies(count, night), copies(count, DAY)));
    }

    private static Map<String, Chart> flat(String words, int count, double value) {
        var part = new TrainDrawing.Part(words, value, 1, value);
        var joint = new TrainDrawing.Joint(0, words, TrainDrawing.Mate.MISFIT);
        var row = new IntervalPlot.Row(words, value, value, value, IntervalPlot.Tone.OPEN, words);
        return Map.of(
                "train",
                new TrainDrawing(words, copies(count, part), copies(Math.min(1, count / 2), joint), 3, value, NAN, NAN),
                "intervals",
                new IntervalPlot(words, words, words, words, copies(count, row)),
                "filters",
                new FilterShare(words, List.of(), copies(count, new FilterShare.Share(words, value))),
                "framing",
                new Framing(words, words, value, NAN, List.of(), copies(count, new Framing.Field(words, value, 20))));
    }

    private static <T> List<T> copies(int count, T item) {
        return Collections.nCopies(count, item);
    }
}
