package noctuary.fits;

import java.util.Locale;
import java.util.Optional;

/** Gain, temperature, pixel pitch and binning as camera drivers and observatories write them (common practice). */
final class CameraCards {
    /** A whole number above this cannot be electrons per ADU. */
    private static final double LARGEST_GAIN = 20;

    private static final double ICE_POINT_K = 273.15;
    private static final double HOTTEST_SENSOR_C = 100;

    private final CardIndex cards;

    CameraCards(CardIndex cards) {
        this.cards = cards;
    }

    Optional<Cited<Double>> electronsPerAdu() {
        Optional<Cited<Double>> outright = cards.positive("EGAIN", "CVF");
        return outright.isPresent() ? outright : cards.positive("GAIN").filter(gain -> !isSetting(gain));
    }

    Optional<Cited<Double>> gainSetting() {
        return cards.number("GAIN").filter(this::isSetting);
    }

    /**
     * A whole number is a driver's setting unless its comment speaks of electrons; so is anything beside an EGAIN that
     * says something else.
     */
    private boolean isSetting(Cited<Double> gain) {
        Optional<Cited<Double>> outright = cards.positive("EGAIN", "CVF");
        if (outright.isPresent()) {
            return !outright.get().value().equals(gain.value());
        }
        boolean whole = gain.value() == Math.rint(gain.value());
        if (whole && gain.value() > LARGEST_GAIN || gain.value() <= 0) {
            return true;
        }
        return Numerals.isWhole(gain.text())
                && !speaksOfElectrons(cards.raw("GAIN").get().comment());
    }

    private static boolean speaksOfElectrons(String comment) {
        return comment.toLowerCase(Locale.ROOT).matches(".*(e-|e\\^-|electron|e/adu|e/dn).*");
    }

    Optional<Cited<Double>> sensorTemperatureC() {
        Optional<Cited<Double>> found =
                cards.number("CCD-TEMP", "CCDTEMP", "CAM-TEMP", "DET-TEMP", "DETTEMP", "TEMPERAT");
        if (found.isEmpty()) {
            return found;
        }
        Cited<Double> written = found.get();
        if (written.value() > HOTTEST_SENSOR_C && written.value() < 2 * ICE_POINT_K) {
            cards.odd(
                    written.card(),
                    written.card() + " = " + written.text().strip() + " cannot be degrees Celsius",
                    "taken as kelvin");
            return Optional.of(new Cited<>(written.value() - ICE_POINT_K, written.card(), written.text()));
        }
        return found.filter(t -> t.value() > -ICE_POINT_K && t.value() <= HOTTEST_SENSOR_C);
    }

    Optional<Cited<Double>> pixelPitchUm() {
        Optional<Cited<Double>> x = cards.positive("XPIXSZ", "PIXSIZE1", "PIXSIZE", "XPIXELSZ");
        Optional<Cited<Double>> y = cards.positive("YPIXSZ", "PIXSIZE2", "YPIXELSZ");
        if (x.isPresent() && y.isPresent() && Math.abs(x.get().value() / y.get().value() - 1) > 0.01) {
            cards.odd(
                    x.get().card(),
                    "pixels are not square: " + x.get().card() + " = "
                            + x.get().text().strip() + ", " + y.get().card() + " = "
                            + y.get().text().strip(),
                    "the width is used");
        }
        return x;
    }

    int binning() {
        Optional<Cited<Double>> binning = cards.number("XBINNING", "CCDXBIN", "BINNING");
        if (binning.isEmpty()) {
            binning = cards.text("CCDSUM", "BINNING")
                    .map(text -> new Cited<>(Numerals.parse(text.value().split("[ xX]")[0]), text.card(), text.text()));
        }
        return binning.filter(b -> b.value() >= 1 && b.value() <= 64)
                .map(b -> b.value().intValue())
                .orElse(1);
    }
}
