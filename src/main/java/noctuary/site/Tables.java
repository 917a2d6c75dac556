package noctuary.site;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import noctuary.measure.CourseFrame;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.site.JournalRecord.EntryRecord;

/** The rows of {@code data/entries.csv} and {@code data/frames.csv}, cell by column name; absent cells are empty. */
final class Tables {
    private final Ledger ledger;

    Tables(Ledger ledger) {
        this.ledger = ledger;
    }

    Stream<Map<String, Object>> entries() {
        EntryRecords records = new EntryRecords(ledger);
        return ledger.content().entries().stream().map(records::of).map(Tables::row);
    }

    private static Map<String, Object> row(EntryRecord entry) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("slug", entry.slug());
        row.put("title", entry.title());
        row.put("target", entry.target());
        row.put("night", entry.night());
        row.put("nights", String.join(" ", entry.nights()));
        row.put("rig", entry.rig());
        row.put("site", entry.site());
        row.put("exposureSeconds", entry.exposureSeconds());
        row.put("exposureByFilter", filters(entry));
        row.put("frames", entry.frames());
        row.put("imageScaleArcsecPerPx", entry.imageScaleArcsecPerPx());
        row.put("imageScaleFrom", entry.imageScaleFrom());
        row.put("fwhmArcsec", entry.fwhmArcsec());
        row.put("fwhmPx", entry.fwhmPx());
        row.put("ellipticity", entry.ellipticity());
        row.put("backgroundLevel", entry.backgroundLevel());
        row.put("backgroundNoise", entry.backgroundNoise());
        row.put("problems", entry.problems().size());
        return row;
    }

    private static String filters(EntryRecord entry) {
        return entry.exposureByFilter().entrySet().stream()
                .map(e -> e.getKey() + "=" + (e.getValue() == null ? "" : Numerals.trimmed(e.getValue(), 3)))
                .collect(Collectors.joining("; "));
    }

    Stream<Map<String, Object>> frames(EntrySheet sheet) {
        return IntStream.range(0, sheet.frames().size()).mapToObj(i -> row(sheet, i));
    }

    private Map<String, Object> row(EntrySheet sheet, int at) {
        FrameSheet frame = sheet.frames().get(at);
        FrameReport report = frame.report();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("slug", sheet.entry().slug());
        row.put("frame", at + 1);
        row.put("file", ledger.discretion().namesFiles() ? ledger.discretion().file(frame.name()) : null);
        row.put("kind", frame.kind().name().toLowerCase(Locale.ROOT));
        row.put("counted", frame.notCounted().isEmpty());
        row.put("taken", report.taken().map(Object::toString).orElse(null));
        row.put("exposureSeconds", report.exposureSeconds());
        row.put("filter", report.filter().orElse(null));
        row.put("gain", report.gain());
        row.put("sensorTemperatureC", report.sensorTemperatureC());
        report.background().ifPresent(sky -> {
            row.put("backgroundLevel", sky.level());
            row.put("backgroundNoise", sky.noise());
            row.put("gradientPercent", sky.gradientPercent());
        });
        report.noise().ifPresent(noise -> noise(row, noise));
        report.stars().ifPresent(stars -> stars(row, stars));
        report.defects().ifPresent(defects -> defects(row, defects));
        sheet.courses().stream()
                .flatMap(course -> course.frame(frame.name()).stream())
                .findFirst()
                .ifPresent(moment -> course(row, moment));
        return row;
    }

    private static void noise(Map<String, Object> row, FrameReport.Noise noise) {
        row.put("noiseOfNeighbours", noise.ofNeighbours());
        row.put("noiseCorrelation", noise.correlation());
        row.put("backgroundNoiseElectrons", noise.electrons());
    }

    private static void stars(Map<String, Object> row, FrameReport.Stars stars) {
        row.put("starsFound", stars.found());
        row.put("starsMeasured", stars.measured());
        row.put("starsSaturated", stars.saturated());
        row.put("fwhmPx", stars.fwhmPx().median());
        row.put("fwhmArcsec", stars.fwhmArcsec().median());
        row.put("ellipticity", stars.ellipticity().median());
        row.put("halfFluxRadiusPx", stars.halfFluxRadiusPx().median());
        row.put("moffatBeta", stars.moffatBeta().median());
    }

    private static void defects(Map<String, Object> row, FrameReport.Blemishes defects) {
        row.put("hotPixels", defects.hotPixels());
        row.put("rowBanding", defects.rowBanding());
        row.put("columnBanding", defects.columnBanding());
        row.put("driftStreak", defects.driftStreak());
        row.put("clippedBlackPercent", defects.clippedBlackPercent());
        row.put("clippedWhitePercent", defects.clippedWhitePercent());
    }

    private static void course(Map<String, Object> row, CourseFrame frame) {
        row.put("relativeTransparency", frame.relativeTransparency());
        frame.field().ifPresent(move -> {
            row.put("driftXArcsec", move.xArcsec());
            row.put("driftYArcsec", move.yArcsec());
            row.put("rotationDeg", OptionalDouble.of(move.rotationDeg()));
        });
    }

    static String cell(Object value) {
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? Double.toString(number.getAsDouble()) : "";
        }
        if (value instanceof String text) {
            return harmless(text);
        }
        return value == null ? "" : value.toString();
    }

    /** A spreadsheet runs text that begins like a formula: an apostrophe in front stops that. */
    private static String harmless(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
