package noctuary.site;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.site.page.EntryPage;

/** The frames of an entry, as printed. */
final class FrameRows {
    private final List<FrameSheet> frames;
    private final Discretion discretion;

    FrameRows(EntrySheet sheet, Discretion discretion) {
        this.frames = sheet.frames();
        this.discretion = discretion;
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
                discretion.text(frame.notCounted().orElse("")));
    }

    private static String median(FrameReport report, Function<FrameReport.Stars, FrameReport.Spread> of, int decimals) {
        OptionalDouble median =
                report.stars().map(of).map(FrameReport.Spread::median).orElse(OptionalDouble.empty());
        return Numerals.fixed(median, decimals);
    }
}
