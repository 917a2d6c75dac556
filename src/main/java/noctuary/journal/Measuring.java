package noctuary.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameReports;
import noctuary.measure.Measurement;
import noctuary.measure.Meter;
import noctuary.measure.ReportJson;

/** A file measured for the terminal, outside any journal; written out only in the form that is asked for. */
public final class Measuring {
    private final FrameReport report;
    private final Measurement measurement;

    private Measuring(FrameReport report, Measurement measurement) {
        this.report = report;
        this.measurement = measurement;
    }

    /**
     * Measures files one after the other, each on all cores, and hands each over when it is done; none is kept. Two at
     * once were slower: large frames share the memory's bandwidth.
     */
    public static void measure(List<Path> files, Consumer<Measuring> each) {
        files.forEach(file -> each.accept(measure(file)));
    }

    private static Measuring measure(Path file) {
        Measurement measurement = Meter.measure(file);
        return new Measuring(FrameReports.of(file.toString(), measurement, OptionalDouble.empty()), measurement);
    }

    /**
     * The report as one line.
     *
     * @param listStars adds every star
     */
    public String json(boolean listStars) {
        return listStars ? ReportJson.withStars(report, measurement) : ReportJson.of(report);
    }

    /** The report as lines of a label and a value. */
    public String table() {
        return ReportTable.of(report);
    }

    public boolean troubled() {
        return !measurement.readable();
    }
}
