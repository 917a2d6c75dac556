package noctuary.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameReports;
import noctuary.measure.Measurement;
import noctuary.measure.Procession;
import noctuary.measure.ReportJson;

/** A file measured for the terminal, outside any journal; written out only in the form that is asked for. */
public final class Measuring {
    private final FrameReport report;
    private final Measurement measurement;

    private Measuring(FrameReport report, Measurement measurement) {
        this.report = report;
        this.measurement = measurement;
    }

    /** Measures files, each on all cores and the next begun meanwhile, and hands them over in order; none is kept. */
    public static void measure(List<Path> files, Consumer<Measuring> each) {
        Procession.of(files, (file, measurement) -> each.accept(of(file, measurement)));
    }

    private static Measuring of(Path file, Measurement measurement) {
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
