package noctuary.journal;

import java.nio.file.Path;
import java.util.OptionalDouble;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameReports;
import noctuary.measure.Measurement;
import noctuary.measure.Meter;
import noctuary.measure.ReportJson;

/** One file measured for the terminal, outside any journal; written out only in the form that is asked for. */
public final class Measuring {
    private final FrameReport report;
    private final Measurement measurement;

    private Measuring(FrameReport report, Measurement measurement) {
        this.report = report;
        this.measurement = measurement;
    }

    /** @param name as the caller gave it */
    public static Measuring measure(String name, Path file) {
        Measurement measurement = Meter.measure(file);
        return new Measuring(FrameReports.of(name, measurement, OptionalDouble.empty()), measurement);
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
