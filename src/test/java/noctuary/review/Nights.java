package noctuary.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Nights for a test: one side after the other, each told apart by what the test is about. */
final class Nights {
    static final Measure FWHM =
            new Measure("fwhm", "FWHM", "arcsec", true).byShare().throughTheSky();
    static final Measure BACKGROUND = new Measure("background", "Background", "e/s", true)
            .byShare()
            .following(Influence.MOON, Influence.TARGET)
            .throughTheSky();
    static final Measure HOT = new Measure("hotPixels", "Hot pixels", "", true);

    /** Before starts in January, after in March; five days from night to night. */
    private static final LocalDate FIRST = LocalDate.of(2025, 1, 3);

    private Nights() {}

    static MeasureNights of(Measure measure, List<NightValue> before, List<NightValue> after) {
        return new MeasureNights(measure, true, before, after);
    }

    static List<NightValue> before(double... values) {
        return from(FIRST, values);
    }

    static List<NightValue> after(double... values) {
        return from(FIRST.plusDays(60), values).stream()
                .map(n -> on(n, "N" + n.target()))
                .toList();
    }

    static List<NightValue> from(LocalDate first, double... values) {
        List<NightValue> nights = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            nights.add(night(first.plusDays(5L * i), "M" + i, values[i]));
        }
        return nights;
    }

    static NightValue night(LocalDate date, String target, double value) {
        double airmass = 1.1 + 0.3 * ((7 * date.getDayOfYear()) % 11) / 11;
        return new NightValue(
                date + target,
                date,
                target,
                "heron",
                "terrace",
                "L",
                value,
                20,
                OptionalDouble.of(airmass),
                OptionalDouble.of(0));
    }

    static NightValue at(NightValue n, String site) {
        return new NightValue(
                n.slug(),
                n.night(),
                n.target(),
                n.rig(),
                site,
                n.filter(),
                n.value(),
                n.frames(),
                n.airmass(),
                n.moonMagnitudes());
    }

    static NightValue through(NightValue n, String filter) {
        return new NightValue(
                n.slug(),
                n.night(),
                n.target(),
                n.rig(),
                n.site(),
                filter,
                n.value(),
                n.frames(),
                n.airmass(),
                n.moonMagnitudes());
    }

    static NightValue under(NightValue n, double airmass, double moon) {
        return new NightValue(
                n.slug(),
                n.night(),
                n.target(),
                n.rig(),
                n.site(),
                n.filter(),
                n.value(),
                n.frames(),
                OptionalDouble.of(airmass),
                OptionalDouble.of(moon));
    }

    static NightValue on(NightValue n, String target) {
        return new NightValue(
                n.slug(),
                n.night(),
                target,
                n.rig(),
                n.site(),
                n.filter(),
                n.value(),
                n.frames(),
                n.airmass(),
                n.moonMagnitudes());
    }

    static NightValue withoutAirmass(NightValue n) {
        return new NightValue(
                n.slug(),
                n.night(),
                n.target(),
                n.rig(),
                n.site(),
                n.filter(),
                n.value(),
                n.frames(),
                OptionalDouble.empty(),
                n.moonMagnitudes());
    }
}
