package noctuary.measure;

import java.util.Optional;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;

/** Tells whether two files are one exposure, saved twice. */
public final class ExposureKey {
    private ExposureKey() {}

    /**
     * Date with time, camera, exposure, filter and airmass: a calibrated copy shares them all. A date alone is no key,
     * since some writers repeat it; then there is none.
     */
    public static Optional<String> of(FrameHeader header) {
        return header.taken()
                .filter(t -> t.text().contains(":"))
                .map(taken -> String.join(
                        "|",
                        taken.value().toString(),
                        text(header.instrument()),
                        text(header.exposureSeconds()),
                        text(header.filter()),
                        text(header.airmass())));
    }

    private static String text(Optional<? extends Cited<?>> card) {
        return card.map(c -> c.value().toString()).orElse("");
    }
}
