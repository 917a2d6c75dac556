package noctuary.journal;

import java.nio.file.Path;
import java.util.OptionalDouble;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameReports;
import noctuary.measure.Measurement;
import noctuary.measure.Meter;
import noctuary.measure.ReportJson;

/** One file measured for the terminal, outside any journal. */
public final class Measuring {
    private Measuring() {}

    /** @param json the report as one line, with the star list where it was asked for */
    public record Outcome(String json, String table, boolean troubled) {}

    /**
     * @param name as the caller gave it
     * @param listStars adds every star to the JSON
     */
    public static Outcome measure(String name, Path file, boolean listStars) {
        Measurement measurement = Meter.measure(file);
        FrameReport report = FrameReports.of(name, measurement, OptionalDouble.empty());
        String json = listStars ? ReportJson.withStars(report, measurement) : ReportJson.of(report);
        return new Outcome(json, ReportTable.of(report), !measurement.readable());
    }
}
