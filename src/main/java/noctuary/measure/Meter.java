package noctuary.measure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import noctuary.fits.FitsFile;
import noctuary.fits.FitsImage;
import noctuary.fits.FrameHeader;
import noctuary.fits.UnreadableException;
import noctuary.image.Mosaic;
import noctuary.image.Plane;
import noctuary.measure.FrameReport.Kind;
import noctuary.measure.FrameReport.Trouble;
import noctuary.measure.Measurement.PlaneSummary;
import noctuary.noise.Survey;
import noctuary.stars.StarField;

/** Measures one file, frame or picture; never throws for what is in it. */
public final class Meter {
    /** Raised whenever the same pixels give other numbers than before, so that cached ones are not believed. */
    public static final String ENGINE = "10";

    private static final List<String> PICTURES = List.of(".png", ".jpg", ".jpeg", ".tif", ".tiff");

    private Meter() {}

    /** Whether the name is that of a processed picture rather than a FITS file. */
    public static boolean isPicture(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return PICTURES.stream().anyMatch(name::endsWith);
    }

    public static Measurement measure(Path file) {
        try {
            return isPicture(file) ? PictureMeter.measure(file) : measureFits(file);
        } catch (OutOfMemoryError e) {
            return unreadable(file, "it does not fit into memory", "give Java more (-Xmx), or measure it by itself");
        } catch (RuntimeException | StackOverflowError e) {
            return unreadable(
                    file, "measuring it failed: " + e, "the other files are measured; this one needs a fix here");
        }
    }

    private static Measurement unreadable(Path file, String what, String hint) {
        return Measurement.unreadable(isPicture(file) ? Kind.PICTURE : Kind.SINGLE, what, hint);
    }

    private static Measurement measureFits(Path file) {
        try {
            FitsImage image = FitsFile.read(file);
            List<Trouble> troubles = new ArrayList<>();
            for (FrameHeader.Oddity oddity : image.header().oddities()) {
                troubles.add(new Trouble("card " + oddity.card(), oddity.what(), oddity.hint()));
            }
            return of(image, troubles);
        } catch (UnreadableException e) {
            return Measurement.unreadable(Kind.SINGLE, e.getMessage(), e.hint());
        }
    }

    private static Measurement of(FitsImage image, List<Trouble> troubles) {
        FrameHeader header = image.header();
        Optional<Mosaic> mosaic = image.planes().size() == 1 ? header.mosaic().map(c -> c.value()) : Optional.empty();
        OptionalDouble saturation =
                header.saturation().map(c -> OptionalDouble.of(c.value())).orElseGet(OptionalDouble::empty);
        return of(
                kind(header),
                image.planes(),
                new StarField.Conditions(mosaic, saturation),
                Optional.of(header),
                image.pixelDigest(),
                troubles);
    }

    static Measurement of(
            Kind kind,
            List<Plane> planes,
            StarField.Conditions conditions,
            Optional<FrameHeader> header,
            String pixelDigest,
            List<Trouble> troubles) {
        Plane main = planes.get(planes.size() / 2);
        ForkJoinTask<Survey> survey = begun(() -> Survey.of(main, conditions.mosaic(), conditions.saturationAdu()));
        List<PlaneSummary> summaries = new ArrayList<>();
        StarField field = null;
        for (int i = 0; i < planes.size(); i++) {
            StarField each = StarField.measure(planes.get(i), conditions);
            summaries.add(new PlaneSummary(each.background(), each.fwhmPx()));
            field = i == planes.size() / 2 ? each : field;
        }
        field.whyNot().ifPresent(why -> troubles.add(new Trouble("stars", why, "")));
        return new Measurement(
                kind,
                main.width(),
                main.height(),
                summaries,
                header,
                Optional.of(field),
                survey.join().noise(),
                Optional.of(survey.join().defects()),
                pixelDigest,
                troubles);
    }

    /** Among the threads that measure this file, where it is measured by such. */
    private static <T> ForkJoinTask<T> begun(Callable<T> work) {
        return ForkJoinTask.inForkJoinPool()
                ? ForkJoinTask.adapt(work).fork()
                : ForkJoinPool.commonPool().submit(work);
    }

    private static Kind kind(FrameHeader header) {
        return header.combinesSeveral() ? Kind.STACK : Kind.SINGLE;
    }
}
