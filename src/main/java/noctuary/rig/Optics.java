package noctuary.rig;

/**
 * The optics of a telescope and a sensor, unobstructed aperture, light of wavelength λ. Lengths in the units the names
 * give; angles in arcsec or degrees. Inputs must be positive and finite.
 */
public final class Optics {
    /** Wavelength of the figures on a rig's page, nm: green, the middle of the visible band. */
    public static final double GREEN_NM = 550;
    /** Arcseconds in a radian. */
    public static final double ARCSEC_PER_RADIAN = 206264.80624709636;
    /** First zero of the Airy pattern, in λ / D: first zero of J₁ over π. */
    public static final double RAYLEIGH = 1.2196698912665045;
    /** Full width at half maximum of the Airy pattern, in λ / D: twice the root of (2 J₁(x) / x)² = 1/2, over π. */
    public static final double AIRY_FWHM = 1.0289939699619919;
    /** Standard deviation to full width at half maximum for a Gaussian: 2 √(2 ln 2). */
    public static final double FWHM_PER_SIGMA = 2.3548200450309493;

    private Optics() {}

    /** Focal length behind a reducer (factor below 1) or an extender (above 1), mm. */
    public static double effectiveFocalLengthMm(double focalLengthMm, double factor) {
        return focalLengthMm * factor;
    }

    public static double focalRatio(double focalLengthMm, double apertureMm) {
        return focalLengthMm / apertureMm;
    }

    /** Sky under one pixel, arcsec: 206.264806 p / f, on the axis to 1 part in 10⁸. */
    public static double imageScaleArcsecPerPx(double pixelUm, double focalLengthMm) {
        return ARCSEC_PER_RADIAN * pixelUm / 1000 / focalLengthMm;
    }

    /** Focal length that gives a measured scale, mm. */
    public static double focalLengthMm(double pixelUm, double imageScaleArcsecPerPx) {
        return ARCSEC_PER_RADIAN * pixelUm / 1000 / imageScaleArcsecPerPx;
    }

    /** Field across a length on the sensor, degrees, exact for a tangent projection: 2 atan(L / 2f). */
    public static double fieldDeg(double lengthMm, double focalLengthMm) {
        return Math.toDegrees(2 * Math.atan(lengthMm / (2 * focalLengthMm)));
    }

    /** Full width at half maximum of a star that diffraction alone has spread, arcsec: 1.02899 λ / D. */
    public static double airyFwhmArcsec(double wavelengthNm, double apertureMm) {
        return AIRY_FWHM * ARCSEC_PER_RADIAN * wavelengthNm * 1e-6 / apertureMm;
    }

    /** Rayleigh's criterion, the radius of the first dark ring, arcsec: 1.21967 λ / D. */
    public static double rayleighArcsec(double wavelengthNm, double apertureMm) {
        return RAYLEIGH * ARCSEC_PER_RADIAN * wavelengthNm * 1e-6 / apertureMm;
    }

    /** Half the range of focus within a quarter wave, µm: ± 2 λ N² (Born &amp; Wolf §8.8, from memory). */
    public static double depthOfFocusUm(double wavelengthNm, double focalRatio) {
        return 2 * wavelengthNm * 1e-3 * focalRatio * focalRatio;
    }

    /** Largest pixel that keeps all the optics can resolve, µm: λ N / 2. */
    public static double nyquistPitchUm(double wavelengthNm, double focalRatio) {
        return wavelengthNm * 1e-3 * focalRatio / 2;
    }

    /** What a square pixel adds to a star's width in quadrature, arcsec: 2.3548 s / √12. */
    public static double pixelFwhmArcsec(double imageScaleArcsecPerPx) {
        return FWHM_PER_SIGMA * imageScaleArcsecPerPx / Math.sqrt(12);
    }

    /** Widths added in quadrature: exact for Gaussians, some percent off where diffraction dominates. */
    public static double quadrature(double... widths) {
        double sum = 0;
        for (double width : widths) {
            sum += width * width;
        }
        return Math.sqrt(sum);
    }

    /** How far a plane plate in the converging beam moves the focus back, mm: t (n - 1) / n. */
    public static double glassShiftMm(double thicknessMm, double refractiveIndex) {
        return thicknessMm * (refractiveIndex - 1) / refractiveIndex;
    }
}
