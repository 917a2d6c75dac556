package noctuary.site;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import noctuary.draw.Chart;
import noctuary.draw.ExposureGrowth;
import noctuary.draw.MonthBars;
import noctuary.draw.NightCalendar;
import noctuary.draw.NightCourse;
import noctuary.draw.Trend;
import noctuary.entry.Site;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.site.page.Drawing;
import noctuary.site.page.Markup;

/** Charts over time, from sheets. A chart with nothing to show is null. */
final class Charts {
    private final Ledger ledger;
    private final List<String> rigs;

    Charts(Ledger ledger) {
        this.ledger = ledger;
        this.rigs = ledger.content().rigs().values().stream()
                .map(rig -> rig.note().name().value())
                .toList();
    }

    /** Hours of exposure by month, one stack a rig. */
    Drawing hoursByMonth(List<Usage> usage) {
        List<MonthBars.Hours> hours = usage.stream()
                .map(use ->
                        new MonthBars.Hours(YearMonth.from(use.night()), rigName(use.sheet()), use.seconds() / 3600))
                .filter(h -> h.hours() > 0)
                .toList();
        Chart chart = new MonthBars("Hours of exposure by month", "Exposure", rigs, hours);
        return hours.isEmpty() ? null : drawing(chart, "hours", "Exposure by month.");
    }

    /** Star width over time, one point an entry, with the changes marked. */
    Drawing sharpness(Address here, List<EntrySheet> sheets, List<ChangeMarks.Mark> changes) {
        List<Trend.Point> points =
                sheets.stream().flatMap(sheet -> point(here, sheet).stream()).toList();
        List<Trend.Change> marks = changes.stream()
                .map(change -> new Trend.Change(change.date(), change.text()))
                .toList();
        Chart chart = new Trend("Star width over time", "Star FWHM", "arcsec", rigs, points, marks);
        return points.isEmpty()
                ? null
                : drawing(
                        chart,
                        "sharpness",
                        "Star width by night, smaller is sharper; lines span the 16th to 84th percentile of the "
                                + "stars.");
    }

    private Optional<Trend.Point> point(Address here, EntrySheet sheet) {
        Optional<LocalDate> night = sheet.night().value();
        Optional<Double> width = sheet.number(Figure.FWHM_ARCSEC).map(q -> q.value());
        if (night.isEmpty() || width.isEmpty()) {
            return Optional.empty();
        }
        FrameReport.Spread spread = sheet.fwhmSpreadArcsec();
        return Optional.of(new Trend.Point(
                night.get(),
                width.get(),
                spread.low().orElse(Double.NaN),
                spread.high().orElse(Double.NaN),
                rigName(sheet),
                sheet.entry().title().value(),
                here.to(Address.entry(sheet.entry().slug()))));
    }

    /** Star width, ellipticity, background, star count, transparency and drift by time. */
    Drawing course(EntrySheet sheet) {
        Optional<ZoneId> zone = ledger.site(sheet).flatMap(Site::zone);
        ZoneId clock = zone.orElse(ZoneOffset.UTC);
        List<NightCourse.Panel> panels = new ArrayList<>(List.of(
                panel(
                        sheet,
                        clock,
                        "Star FWHM",
                        "px",
                        r -> r.stars().map(s -> s.fwhmPx().median())),
                panel(
                        sheet,
                        clock,
                        "Ellipticity",
                        "",
                        r -> r.stars().map(s -> s.ellipticity().median())),
                panel(
                        sheet,
                        clock,
                        "Background",
                        "ADU",
                        r -> r.background().map(sky -> OptionalDouble.of(sky.level()))),
                panel(
                        sheet,
                        clock,
                        "Stars measured",
                        "",
                        r -> r.stars().map(stars -> OptionalDouble.of(stars.measured())))));
        panels.addAll(CoursePanels.of(sheet.courses(), clock));
        boolean nothing = panels.stream().allMatch(panel -> panel.samples().size() < 2);
        String name = zone.isPresent() ? "local time" : "UTC";
        return nothing
                ? null
                : drawing(
                        new NightCourse("The night's course", name, panels, List.of()),
                        "night",
                        "Frame by frame, " + name + "; their numbers are in the table of frames.");
    }

    private static NightCourse.Panel panel(
            EntrySheet sheet,
            ZoneId clock,
            String name,
            String unit,
            Function<FrameReport, Optional<OptionalDouble>> value) {
        List<NightCourse.Sample> samples = new ArrayList<>();
        for (FrameSheet frame : sheet.frames()) {
            OptionalDouble number = value.apply(frame.report()).orElse(OptionalDouble.empty());
            if (frame.kind().isCalibration() || number.isEmpty()) {
                continue;
            }
            frame.report()
                    .taken()
                    .ifPresent(taken -> samples.add(
                            new NightCourse.Sample(LocalDateTime.ofInstant(taken, clock), number.getAsDouble())));
        }
        return new NightCourse.Panel(name, unit, samples);
    }

    /** Exposure growing from attempt to attempt. */
    Drawing growth(Address here, List<EntrySheet> sheets) {
        List<ExposureGrowth.Attempt> attempts = sheets.stream()
                .filter(sheet -> sheet.night().value().isPresent())
                .map(sheet -> new ExposureGrowth.Attempt(
                        sheet.night().value().orElseThrow(),
                        sheet.number(Figure.EXPOSURE).map(q -> q.value()).orElse(0.0) / 3600,
                        rigName(sheet),
                        sheet.entry().title().value(),
                        here.to(Address.entry(sheet.entry().slug()))))
                .toList();
        Chart chart = new ExposureGrowth("Exposure on this target", Double.NaN, rigs, attempts);
        return attempts.isEmpty() ? null : drawing(chart, "growing", "Hours of exposure, added up by night.");
    }

    /** One calendar a year, newest first: hours used and lost. */
    List<Drawing> calendars(Map<LocalDate, List<Usage>> nights) {
        Map<Integer, List<NightCalendar.Night>> years = new TreeMap<>((a, b) -> b - a);
        nights.forEach((date, uses) -> {
            double used = uses.stream().mapToDouble(Usage::seconds).sum() / 3600;
            double lost = Usage.lostOn(date, uses).stream()
                            .mapToDouble(l -> l.minutes())
                            .sum()
                    / 60;
            String label = uses.get(0).sheet().entry().title().value();
            years.computeIfAbsent(date.getYear(), year -> new ArrayList<>())
                    .add(new NightCalendar.Night(date, used > 0 ? used : Double.NaN, lost, label, "#night-" + date));
        });
        List<Drawing> drawings = new ArrayList<>();
        years.forEach((year, days) -> drawings.add(drawing(
                new NightCalendar("Nights of " + year, year, days, List.of()),
                "calendar-" + year,
                "Nights of " + year + ": hours used, and hours lost.")));
        return drawings;
    }

    private String rigName(EntrySheet sheet) {
        String name = ledger.rigName(sheet);
        return name.isEmpty() ? "rig not told" : name;
    }

    static Drawing drawing(Chart chart, String id, String caption) {
        return new Drawing(caption, new Markup(chart.both(id)));
    }
}
