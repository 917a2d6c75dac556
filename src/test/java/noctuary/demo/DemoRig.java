package noctuary.demo;

import java.time.LocalDate;

/**
 * What a rig truly is. The rig notes of the journal say the same where the keeper could know it.
 *
 * @param zeroPointEPerS electrons a second from a star of magnitude 0 in green
 * @param response of red, green, blue against green
 * @param ownFwhmArcsec what the optics add to the seeing, diffraction included
 * @param spider true where vanes hold a mirror and bright stars grow four rays
 * @param mosaic colour pattern from the first stored pixel; empty for a mono camera
 * @param hotPixels on the sensor
 */
record DemoRig(
        String id,
        String instrument,
        int width,
        int height,
        double pixelUm,
        double apertureMm,
        double focalLengthMm,
        double gainEPerAdu,
        int gainSetting,
        double readNoiseE,
        int offsetAdu,
        double fullWellE,
        double darkEPerS,
        double zeroPointEPerS,
        double[] response,
        double ownFwhmArcsec,
        boolean spider,
        String mosaic,
        int hotPixels) {
    private static final LocalDate NEW_SPACER = LocalDate.of(2025, 9, 20);

    static final DemoRig WREN = new DemoRig(
            "wren",
            "OCELLA 375C",
            912,
            684,
            3.75,
            80,
            384,
            7.0,
            60,
            3.1,
            100,
            28000,
            0.02,
            2.3e7,
            new double[] {0.80, 1, 0.72},
            1.9,
            false,
            "RGGB",
            140);
    static final DemoRig HERON = new DemoRig(
            "heron",
            "TENEBRA M46",
            928,
            696,
            4.6,
            150,
            712.5,
            8.4,
            0,
            3.6,
            64,
            34000,
            0.008,
            6.6e7,
            new double[] {0.95, 1, 0.85},
            1.15,
            true,
            "",
            90);

    static DemoRig of(String id) {
        return id.equals("wren") ? WREN : HERON;
    }

    boolean colour() {
        return !mosaic.isEmpty();
    }

    double arcsecPerPx() {
        return 206.264806 * pixelUm / focalLengthMm;
    }

    double focalRatio() {
        return focalLengthMm / apertureMm;
    }

    /**
     * Distance of the sensor from where the corrector wants it; the glass before it asks for 56.19 mm instead of 55.
     */
    double spacingErrorMm(LocalDate date) {
        if (colour()) {
            return 0.15;
        }
        return date.isBefore(NEW_SPACER) ? 55.0 - 56.19 : 56.2 - 56.19;
    }

    /** Share by which the star size grows from the middle to the right edge of the sensor. */
    double tilt() {
        return colour() ? 0.03 : 0.02;
    }
}
