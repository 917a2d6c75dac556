package noctuary.effect;

/**
 * The stretch found, and what it leaves in doubt.
 *
 * @param skyGain slope of the picture about the sky over that of the transfer; 1 where the transfer holds
 * @param skyKnown whether that slope was found with the bend of the stretch within the noise, and is nearer than any kernel's sum
 * @param stepAfter whether something smoothed or sharpened after the stretch for certain
 * @param noShapes why the curve is not good enough for widths of stars and its own strength; empty when it is
 * @param noLight why it says nothing of anything brighter than the sky; empty when it does
 */
record Stretching(
        Transfer transfer, double skyGain, boolean skyKnown, boolean stepAfter, String noShapes, String noLight) {
    static Stretching sure(Transfer transfer) {
        return of(transfer, false);
    }

    static Stretching of(Transfer transfer, boolean stepAfter) {
        return new Stretching(transfer, 1, false, stepAfter, "", "");
    }

    /** With the slope about the sky as the sky shows it. */
    Stretching asShown(double gain, boolean known) {
        return new Stretching(transfer, gain, known, stepAfter, noShapes, noLight);
    }

    Stretching withoutShapes(String why) {
        return new Stretching(transfer, skyGain, skyKnown, stepAfter, why, noLight);
    }
}
