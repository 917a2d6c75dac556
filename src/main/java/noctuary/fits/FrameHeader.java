package noctuary.fits;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import noctuary.image.Mosaic;

/**
 * What the header of one image says, whatever its dialect; each value cites its card. Absent is absent.
 *
 * @param object target as written, trimmed
 * @param taken start of the exposure, UTC
 * @param middle middle of the exposure, UTC, where a card says so
 * @param exposureSeconds of one exposure, or as the header of a combined frame gives it
 * @param exposures number of frames combined; absent for a single frame
 * @param totalSeconds total exposure where a card says so outright (LIVETIME and the like)
 * @param filter as written
 * @param electronsPerAdu only where the card means that (EGAIN, or a GAIN that cannot be a setting)
 * @param gainSetting a driver's gain setting, which is no e/ADU
 * @param readNoiseElectrons as claimed
 * @param sensorTemperatureC measured; a set point alone does not count
 * @param setTemperatureC asked of the cooler
 * @param pixelPitchUm as written, binned or not (see binning); square pixels
 * @param binning 1 when absent
 * @param focalLengthMm as written; 0 means unknown and is absent
 * @param apertureMm as written; 0 is absent
 * @param centre coordinates of the target or the image centre from RA/DEC cards, degrees
 * @param sky from WCS cards
 * @param mosaic colour pattern from the first stored pixel
 * @param instrument camera as written
 * @param airmass as written
 * @param focuserTemperatureC as written
 * @param focuserPosition in the focuser's own steps
 * @param ambientTemperatureC as written
 * @param pierSide side of the mount the telescope was on, as written
 * @param saturation level in physical units, where a card says so
 * @param oddities sentences about cards that contradict each other or the standard, each with the card named
 */
public record FrameHeader(
        FrameKind kind,
        Optional<Cited<String>> object,
        Optional<Cited<Instant>> taken,
        Optional<Cited<Instant>> middle,
        Optional<Cited<Double>> exposureSeconds,
        Optional<Cited<Integer>> exposures,
        Optional<Cited<Double>> totalSeconds,
        Optional<Cited<String>> filter,
        Optional<Cited<Double>> electronsPerAdu,
        Optional<Cited<Double>> gainSetting,
        Optional<Cited<Double>> readNoiseElectrons,
        Optional<Cited<Double>> sensorTemperatureC,
        Optional<Cited<Double>> setTemperatureC,
        Optional<Cited<Double>> pixelPitchUm,
        int binning,
        Optional<Cited<Double>> focalLengthMm,
        Optional<Cited<Double>> apertureMm,
        Optional<Cited<Centre>> centre,
        Optional<Cited<SkyPlane>> sky,
        Optional<Cited<Mosaic>> mosaic,
        Optional<Cited<String>> instrument,
        Optional<Cited<Double>> airmass,
        Optional<Cited<Double>> focuserTemperatureC,
        Optional<Cited<Double>> focuserPosition,
        Optional<Cited<Double>> ambientTemperatureC,
        Optional<Cited<String>> pierSide,
        Optional<Cited<Double>> saturation,
        List<Oddity> oddities) {
    public FrameHeader {
        oddities = List.copyOf(oddities);
    }

    /** What these cards say of an image of that size in pixels. */
    public static FrameHeader of(List<Card> cards, int width, int height) {
        return HeaderReader.read(new CardIndex(cards), width, height, List.of());
    }

    /** Whether the cards tell of several exposures in one image. */
    public boolean combinesSeveral() {
        return exposures.filter(n -> n.value() > 1).isPresent() || totalSeconds.isPresent();
    }

    /** Right ascension and declination, degrees. */
    public record Centre(double raDeg, double decDeg) {}

    /** Something wrong or doubtful about a card, and what to do. */
    public record Oddity(String card, String what, String hint) {}
}
