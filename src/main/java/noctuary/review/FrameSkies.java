package noctuary.review;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.entry.Site;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.sky.Catalogue;
import noctuary.sky.DeepSkyObject;
import noctuary.sky.Equatorial;
import noctuary.sky.Moonlight;
import noctuary.sky.SkyAt;
import noctuary.sky.SkyPlace;

/** Works out the sky over a frame: position from the header, else from the catalogue by the target's name. */
final class FrameSkies {
    /** A natural dark sky at the zenith, V magnitudes per square arcsec: common practice, no source. */
    private static final double DARK_SKY = 21.6;
    /** Extinction in V, magnitudes an airmass, as Krisciunas and Schaefer used it. */
    private static final double EXTINCTION = 0.172;
    /** Airmasses that a header can mean. */
    private static final double MOST_AIRMASS = 40;

    private FrameSkies() {}

    static FrameSky of(FrameSheet frame, Optional<String> target, Optional<Site> site) {
        Optional<FrameHeader> header = frame.header();
        Optional<Instant> middle = header.flatMap(h -> middle(h, frame.report()));
        Optional<SkyPlace> place = site.flatMap(FrameSkies::place);
        FrameSky computed = middle.isEmpty() || place.isEmpty()
                ? FrameSky.UNKNOWN
                : at(SkyAt.at(middle.get(), place.get()), position(header.get(), target));
        Optional<Double> told =
                header.flatMap(FrameHeader::airmass).map(Cited::value).filter(x -> x >= 1 && x < MOST_AIRMASS);
        boolean single = frame.report().kind() == FrameReport.Kind.SINGLE;
        return told.isPresent() && (single || computed.airmass().isEmpty())
                ? computed.withAirmass(told.get())
                : computed;
    }

    /** Where the site stands; empty without both coordinates. */
    static Optional<SkyPlace> place(Site site) {
        return site.latitudeDeg().isPresent() && site.longitudeDeg().isPresent()
                ? Optional.of(new SkyPlace(
                        site.latitudeDeg().getAsDouble(), site.longitudeDeg().getAsDouble()))
                : Optional.empty();
    }

    /** The middle as a card says it, else half the exposure after the start; a stack's gaps are not known. */
    private static Optional<Instant> middle(FrameHeader header, FrameReport report) {
        if (header.middle().isPresent()) {
            return header.middle().map(Cited::value);
        }
        long half = Math.round(500 * report.exposureSeconds().orElse(0));
        return header.taken().map(t -> t.value().plusMillis(half));
    }

    private static Optional<Equatorial> position(FrameHeader header, Optional<String> target) {
        Optional<Equatorial> solved = header.sky()
                .map(s -> new Equatorial(s.value().raDeg(), s.value().decDeg()));
        Optional<Equatorial> told = header.centre()
                .map(c -> new Equatorial(c.value().raDeg(), c.value().decDeg()));
        return solved.or(() -> told).or(() -> target.flatMap(Catalogue::find).map(DeepSkyObject::j2000));
    }

    private static FrameSky at(SkyAt sky, Optional<Equatorial> position) {
        Optional<SkyAt.Target> target = position.map(sky::target);
        return new FrameSky(
                OptionalDouble.of(sky.sun().altitudeDeg()),
                OptionalDouble.of(sky.moon().altitudeDeg()),
                OptionalDouble.of(sky.moonLit()),
                target.map(t -> OptionalDouble.of(t.moonDistanceDeg())).orElse(OptionalDouble.empty()),
                target.map(t -> moonMagnitudes(sky, t)).orElse(OptionalDouble.empty()),
                target.map(SkyAt.Target::airmass).orElse(OptionalDouble.empty()));
    }

    private static OptionalDouble moonMagnitudes(SkyAt sky, SkyAt.Target target) {
        double altitude = target.direction().altitudeDeg();
        if (altitude <= 0) {
            return OptionalDouble.empty();
        }
        double moonlight = Moonlight.nanolamberts(
                altitude, sky.moon().altitudeDeg(), target.moonDistanceDeg(), sky.moonPhaseAngleDeg(), EXTINCTION);
        double dark = Moonlight.darkSky(Moonlight.nanolamberts(DARK_SKY), altitude, EXTINCTION);
        return OptionalDouble.of(2.5 * Math.log10(1 + moonlight / dark));
    }
}
