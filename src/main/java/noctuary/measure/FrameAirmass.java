package noctuary.measure;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.entry.Site;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.sky.Equatorial;
import noctuary.sky.SkyAt;
import noctuary.sky.SkyPlace;

/** Airmass of a frame: as the header says, else from its coordinates, its time and the site. */
public final class FrameAirmass {
    private FrameAirmass() {}

    public static OptionalDouble of(FrameHeader header, Optional<Site> site) {
        Optional<Cited<Double>> told = header.airmass().filter(c -> c.value() >= 1 && c.value() < 40);
        if (told.isPresent()) {
            return OptionalDouble.of(told.get().value());
        }
        Optional<Instant> when = header.middle().or(header::taken).map(Cited::value);
        Optional<SkyPlace> place = site.filter(
                        s -> s.latitudeDeg().isPresent() && s.longitudeDeg().isPresent())
                .map(s -> new SkyPlace(
                        s.latitudeDeg().getAsDouble(), s.longitudeDeg().getAsDouble()));
        if (when.isEmpty() || place.isEmpty() || header.centre().isEmpty()) {
            return OptionalDouble.empty();
        }
        FrameHeader.Centre centre = header.centre().get().value();
        return SkyAt.at(when.get(), place.get())
                .target(new Equatorial(centre.raDeg(), centre.decDeg()))
                .airmass();
    }
}
