package noctuary.measure;

import java.util.List;
import java.util.Optional;
import noctuary.fact.Origin;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;

/** Total exposure of one file from its own cards. */
final class ExposureCards {
    private ExposureCards() {}

    /** Seconds and the cards they come from, by name. */
    record Total(double seconds, String formula, List<Part> parts) {}

    record Part(String name, Cited<?> cited) {
        Origin.Input input(String file) {
            return new Origin.Input(name, cited.text(), new Origin.Header(file, cited.card(), cited.text()));
        }
    }

    /** A total-time card where there is one, else count times one exposure, else the one exposure. */
    static Optional<Total> totalSeconds(FrameHeader header) {
        if (header.totalSeconds().isPresent()) {
            Cited<Double> total = header.totalSeconds().get();
            return Optional.of(new Total(total.value(), "as the card says", List.of(new Part("total time", total))));
        }
        return header.exposureSeconds().map(one -> counted(header, one));
    }

    private static Total counted(FrameHeader header, Cited<Double> one) {
        Part time = new Part("one exposure", one);
        return header.exposures()
                .map(n -> new Total(
                        milliseconds(one.value()) * n.value() / 1000.0,
                        "count × one exposure",
                        List.of(new Part("count", n), time)))
                .orElseGet(() -> new Total(one.value(), "as the card says", List.of(time)));
    }

    /** Whole milliseconds, so that sums of exposures do not collect binary fractions. */
    static long milliseconds(double seconds) {
        return Math.round(seconds * 1000);
    }
}
