package noctuary.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameReports;
import noctuary.measure.Measurement;
import noctuary.measure.Meter;
import noctuary.measure.ReportJson;

/** A file measured for the terminal, outside any journal; written out only in the form that is asked for. */
public final class Measuring {
    /** Files in memory at once. */
    private static final int AT_ONCE = 2;

    private final FrameReport report;
    private final Measurement measurement;

    private Measuring(FrameReport report, Measurement measurement) {
        this.report = report;
        this.measurement = measurement;
    }

    /** Measures files, a few at once, and hands each over as soon as those before it are done. */
    public static void measure(List<Path> files, Consumer<Measuring> each) {
        ExecutorService workers = Executors.newFixedThreadPool(Math.min(AT_ONCE, files.size()));
        try {
            List<Future<Measuring>> waiting = files.stream()
                    .map(file -> workers.submit(() -> measure(file)))
                    .toList();
            for (Future<Measuring> next : waiting) {
                each.accept(next.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("measuring failed", e.getCause());
        } finally {
            workers.shutdownNow();
        }
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
