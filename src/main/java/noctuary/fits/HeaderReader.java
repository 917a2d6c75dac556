package noctuary.fits;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Gathers every fact of a header, each by the rules of its own class. */
final class HeaderReader {
    private static final Pattern PATH = Pattern.compile("(?<![\\w.\\-])(?:/|[A-Za-z]:[\\\\/])(?:[^/\\\\]++[\\\\/])++");

    private HeaderReader() {}

    /** @param noticed oddities found before; they come first */
    static FrameHeader read(CardIndex cards, int width, int height, List<FrameHeader.Oddity> noticed) {
        ExposureCards exposure = new ExposureCards(cards);
        TimeCards time = new TimeCards(cards);
        CameraCards camera = new CameraCards(cards);
        Optional<Cited<Double>> seconds = exposure.seconds();
        Optional<Cited<Integer>> count = exposure.count();
        Optional<Cited<Instant>> taken = time.taken(seconds.map(Cited::value));
        return new FrameHeader(
                KindCards.kind(cards),
                cards.text("OBJECT").map(HeaderReader::name),
                taken,
                time.middle(),
                seconds,
                count,
                exposure.total(count),
                cards.text("FILTER", "FILTER1", "FILT", "FILTER.NAME", "ESO.INS.FILT1.NAME")
                        .map(HeaderReader::name),
                camera.electronsPerAdu(),
                camera.gainSetting(),
                cards.positive("RDNOISE", "READNOIS", "READNOI", "RON"),
                camera.sensorTemperatureC(),
                cards.number("SET-TEMP", "SETTEMP", "CCD-TSET"),
                camera.pixelPitchUm(),
                camera.binning(),
                cards.positive("FOCALLEN", "FOCAL"),
                cards.positive("APTDIA"),
                PointingCards.centre(cards),
                new SkyCards(cards, width, height).sky(),
                MosaicCards.mosaic(cards, height),
                cards.text("INSTRUME"),
                cards.number("AIRMASS", "SECZ").filter(airmass -> airmass.value() >= 0.99),
                cards.number("FOCTEMP", "FOCUSTEM"),
                cards.number("FOCPOS", "FOCUSPOS"),
                cards.number("AMBTEMP", "OUTTEMP"),
                cards.text("PIERSIDE"),
                cards.positive("SATURATE", "SATLEVEL"),
                together(noticed, cards.oddities()));
    }

    private static List<FrameHeader.Oddity> together(List<FrameHeader.Oddity> first, List<FrameHeader.Oddity> second) {
        List<FrameHeader.Oddity> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** A name that was written as a path is its last piece: folders of somebody's disk name nothing in the sky. */
    private static Cited<String> name(Cited<String> text) {
        String name = PATH.matcher(text.value()).replaceAll("").strip();
        return name.isEmpty() ? text : new Cited<>(name, text.card(), text.text());
    }
}
