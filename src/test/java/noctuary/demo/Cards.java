package noctuary.demo;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import nom.tam.fits.HeaderCard;
import nom.tam.fits.HeaderCardException;

/** The header cards of a file, in the dialect of the camera that wrote it. */
final class Cards {
    private final List<HeaderCard> cards = new ArrayList<>();
    private final PlannedEntry entry;
    private final DemoRig rig;
    private final DemoSky sky;
    private final DemoSite site;

    private Cards(PlannedEntry entry) {
        this.entry = entry;
        this.rig = DemoRig.of(entry.rig());
        this.sky = DemoSky.towards(entry.target());
        this.site = DemoSite.of(entry.site());
    }

    static List<HeaderCard> ofFrame(PlannedEntry entry, Moment moment, String filter) {
        Cards cards = new Cards(entry);
        if (cards.rig.colour()) {
            cards.first(moment);
            cards.text("IMAGETYP", "LIGHT", "");
            cards.number("GAIN", cards.rig.gainSetting(), "setting");
            cards.number("EGAIN", cards.rig.gainEPerAdu(), "[e-/ADU]");
            cards.number("OFFSET", cards.rig.offsetAdu(), "[ADU]");
            cards.text("BAYERPAT", cards.rig.mosaic(), "from the first pixel stored");
        } else {
            cards.second(moment, filter);
            cards.text("OBSTYPE", "OBJECT", "");
            cards.number("EGAIN", cards.rig.gainEPerAdu(), "electrons per count");
            cards.number("RDNOISE", cards.rig.readNoiseE(), "electrons");
        }
        return cards.cards;
    }

    static List<HeaderCard> ofStack(PlannedEntry entry, Moment moment, Pointing pointing, double scale) {
        Cards cards = new Cards(entry);
        int count = entry.filter().equals("RGB") ? 3 * entry.count() : entry.count();
        if (cards.rig.colour()) {
            cards.first(moment);
            cards.number("NCOMBINE", count, "exposures in this mean");
        } else {
            cards.second(moment, entry.filter());
            cards.number("NFRAMES", count, "exposures in this mean");
            cards.plane(pointing);
        }
        cards.number("LIVETIME", count * entry.seconds(), "[s] of all exposures together");
        cards.history("mean of " + count + " exposures, calibrated and aligned, linear");
        cards.history(String.format(Locale.ROOT, "counts are %.0f times those of one exposure, plus 400", scale));
        return cards.cards;
    }

    /** The colour camera's way. */
    private void first(Moment moment) {
        text("OBJECT", sky.object(), "");
        text("TELESCOP", rig.id(), "");
        text("INSTRUME", rig.instrument(), "");
        text("DATE-OBS", iso(moment.start()), "UTC, start");
        number("EXPTIME", entry.seconds(), "[s]");
        number("CCD-TEMP", Math.round(10 * (-5 + 0.02 * moment.temperatureC())) / 10.0, "[degC]");
        number("SET-TEMP", -5, "[degC]");
        number("XBINNING", 1, "");
        number("YBINNING", 1, "");
        number("XPIXSZ", rig.pixelUm(), "[um]");
        number("YPIXSZ", rig.pixelUm(), "[um]");
        number("FOCALLEN", rig.focalLengthMm(), "[mm]");
        number("APTDIA", rig.apertureMm(), "[mm]");
        text("OBJCTRA", sexagesimal(sky.raDeg() / 15, ""), "[h m s] J2000");
        text("OBJCTDEC", sexagesimal(Math.abs(sky.decDeg()), sky.decDeg() < 0 ? "-" : "+"), "[d m s] J2000");
        text("SITELAT", sexagesimal(site.latitudeDeg(), "+"), "[d m s]");
        text("SITELONG", sexagesimal(site.longitudeDeg(), "+"), "[d m s] east");
        number("AIRMASS", Math.round(1000 * moment.airmass()) / 1000.0, "");
        number("FOCTEMP", Math.round(10 * moment.temperatureC()) / 10.0, "[degC]");
    }

    /** The mono camera's way. */
    private void second(Moment moment, String filter) {
        text("OBJECT", sky.object().replace(" ", "").toLowerCase(Locale.ROOT), "");
        text("TELESCOP", rig.id(), "");
        text("INSTRUME", rig.instrument(), "");
        text("FILTER", filter, "");
        text("DATE-OBS", iso(moment.start()), "");
        text("TIMESYS", "UTC", "");
        number("EXPOSURE", entry.seconds(), "seconds");
        number("CCD-TEMP", Math.round(10 * (-9.9 + 0.01 * moment.temperatureC())) / 10.0, "Celsius");
        number("XPIXSZ", rig.pixelUm(), "micrometres");
        number("XBINNING", 1, "");
        number("FOCALLEN", 712, "millimetres");
        number("APTDIA", rig.apertureMm(), "millimetres");
        number("RA", Math.round(1e5 * sky.raDeg()) / 1e5, "degrees");
        number("DEC", Math.round(1e5 * sky.decDeg()) / 1e5, "degrees");
        text("RADESYS", "ICRS", "");
        number("LAT-OBS", site.latitudeDeg(), "degrees");
        number("LONG-OBS", site.longitudeDeg(), "degrees east");
        number("FOCUSTEM", Math.round(10 * moment.temperatureC()) / 10.0, "Celsius");
    }

    private void plane(Pointing p) {
        text("CTYPE1", "RA---TAN", "");
        text("CTYPE2", "DEC--TAN", "");
        text("CUNIT1", "deg", "");
        text("CUNIT2", "deg", "");
        number("CRVAL1", sky.raDeg(), "");
        number("CRVAL2", sky.decDeg(), "");
        number("CRPIX1", p.centreX() + 1, "");
        number("CRPIX2", p.centreY() + 1, "");
        number("CD1_1", p.cd11() / 3600, "");
        number("CD1_2", p.cd12() / 3600, "");
        number("CD2_1", p.cd21() / 3600, "");
        number("CD2_2", p.cd22() / 3600, "");
    }

    private static String iso(Instant when) {
        return when.toString().replace("Z", "");
    }

    private static String sexagesimal(double value, String sign) {
        long seconds = Math.round(3600 * value);
        return String.format(Locale.ROOT, "%s%02d %02d %02d", sign, seconds / 3600, seconds / 60 % 60, seconds % 60);
    }

    private void text(String key, String value, String comment) {
        add(() -> new HeaderCard(key, value, comment.isEmpty() ? null : comment));
    }

    private void number(String key, double value, String comment) {
        String note = comment.isEmpty() ? null : comment;
        add(() -> value == Math.rint(value) && Math.abs(value) < 1e6
                ? new HeaderCard(key, (int) value, note)
                : new HeaderCard(key, value, note));
    }

    private void history(String text) {
        add(() -> HeaderCard.createHistoryCard(text));
    }

    private void add(Making making) {
        try {
            cards.add(making.card());
        } catch (HeaderCardException e) {
            throw new IllegalStateException(e);
        }
    }

    private interface Making {
        HeaderCard card() throws HeaderCardException;
    }
}
