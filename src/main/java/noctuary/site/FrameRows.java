package noctuary.site;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import noctuary.measure.CourseFrame;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.site.page.EntryPage;

/** The frames of an entry, as printed. */
final class FrameRows {
    private final List<FrameSheet> frames;
    private final Map<String, CourseFrame> courses = new HashMap<>();
    private final FieldDrift drift;
    private final Discretion discretion;

    FrameRows(EntrySheet sheet, Discretion discretion) {
        this.frames = sheet.frames();
        List<CourseFrame> compared = FieldDrift.compared(sheet.courses());
        compared.forEach(frame -> courses.put(frame.name(), frame));
        this.drift = FieldDrift.of(compared);
        this.discretion = discretion;
    }

    /** Of what frames tell only together; empty where they do not. */
    String driftUnit() {
        return courses.isEmpty() ? "" : drift.unit();
    }

    List<EntryPage.FrameRow> rows() {
        return IntStream.range(0, frames.size()).mapToObj(this::row).toList();
    }

    private EntryPage.FrameRow row(int at) {
        FrameSheet frame = frames.get(at);
        FrameReport report = frame.report();
        return new EntryPage.FrameRow(
                discretion.namesFiles() ? discretion.file(frame.name()) : "frame " + (at + 1),
                report.taken().map(Dates::moment).orElse(""),
                report.filter().orElse(""),
                report.exposureSeconds().isPresent()
                        ? Numerals.trimmed(report.exposureSeconds().getAsDouble(), 2)
                        : "",
                median(report, FrameReport.Stars::fwhmPx, 2),
                median(report, FrameReport.Stars::fwhmArcsec, 2),
                median(report, FrameReport.Stars::ellipticity, 3),
                report.background().map(sky -> Numerals.fixed(sky.level(), 1)).orElse(""),
                report.stars().map(stars -> "" + stars.measured()).orElse(""),
                together(frame, CourseFrame::relativeTransparency, 2),
                together(frame, drift::x, 1),
                together(frame, drift::y, 1),
                discretion.text(frame.notCounted().orElse("")));
    }

    private String together(FrameSheet frame, Function<CourseFrame, OptionalDouble> of, int decimals) {
        CourseFrame course = courses.get(frame.name());
        return course == null ? "" : Numerals.fixed(of.apply(course), decimals);
    }

    private static String median(FrameReport report, Function<FrameReport.Stars, FrameReport.Spread> of, int decimals) {
        OptionalDouble median =
                report.stars().map(of).map(FrameReport.Spread::median).orElse(OptionalDouble.empty());
        return Numerals.fixed(median, decimals);
    }
}
