package noctuary.stars.sim;

/**
 * One star of a simulated frame.
 *
 * @param fwhmPx geometric mean of both axes of the profile itself
 * @param fluxElectrons total of the profile
 * @param snr of the flux, from the best weights: 1 / sqrt(1 / sum(p² / variance)) / flux; NaN when planted by its light
 */
public record PlantedStar(
        double x,
        double y,
        double fluxElectrons,
        double fwhmPx,
        double ellipticity,
        double angleDeg,
        double beta,
        double snr) {}
