package noctuary.measure;

import java.util.Optional;
import noctuary.fits.FrameHeader;

/** Image scale from the optics cards of a header. */
final class HeaderOptics {
    /** Arcseconds in a radian over micrometres in a millimetre. */
    static final double ARCSEC_UM_PER_MM = 206.26480624709636;

    private HeaderOptics() {}

    /** 206.265 p / f with the pitch as written, which by custom is that of the binned pixel. */
    static Optional<Double> arcsecPerPx(FrameHeader header) {
        return header.pixelPitchUm()
                .flatMap(
                        pitch -> header.focalLengthMm().map(focal -> ARCSEC_UM_PER_MM * pitch.value() / focal.value()));
    }
}
