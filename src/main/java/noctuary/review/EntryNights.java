package noctuary.review;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.entry.Journal;
import noctuary.entry.Site;
import noctuary.entry.Typed;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.measure.NightCourse;
import noctuary.measure.RigSheet;
import noctuary.sky.Darkness;
import noctuary.sky.SkyPlace;

/** Splits entries into nights. */
final class EntryNights {
    private static final Comparator<EntryNight> BY_DATE =
            Comparator.comparing(EntryNight::night).thenComparing(EntryNight::slug);

    private final Journal journal;
    private final Map<String, RigSheet> rigs;

    EntryNights(Journal journal, Map<String, RigSheet> rigs) {
        this.journal = journal;
        this.rigs = rigs;
    }

    /** By date; entries whose night nobody tells are not among them. */
    List<EntryNight> of(List<EntrySheet> sheets) {
        return sheets.stream()
                .flatMap(sheet -> nights(sheet).stream())
                .sorted(BY_DATE)
                .toList();
    }

    private List<EntryNight> nights(EntrySheet sheet) {
        Optional<LocalDate> first = sheet.night().value();
        if (first.isEmpty()) {
            return List.of();
        }
        List<FrameSheet> counted =
                sheet.frames().stream().filter(FrameSheet::counted).toList();
        List<EntryNight> nights = new ArrayList<>();
        for (NightCourse course : sheet.courses()) {
            nights.add(night(sheet, course.night(), timed(counted, course)));
        }
        if (nights.isEmpty()) {
            List<FrameSheet> files = counted.isEmpty()
                    ? sheet.stack().filter(EntryNights::readable).stream().toList()
                    : counted;
            nights.add(night(sheet, first.get(), files));
        }
        return nights;
    }

    private static boolean readable(FrameSheet file) {
        return file.measurement().readable();
    }

    private static List<FrameSheet> timed(List<FrameSheet> counted, NightCourse course) {
        return counted.stream()
                .filter(f -> course.frames().stream()
                        .anyMatch(c -> c.name().equals(f.name())
                                && f.report().taken().filter(c.taken()::equals).isPresent()))
                .toList();
    }

    private EntryNight night(EntrySheet sheet, LocalDate night, List<FrameSheet> files) {
        Optional<Site> site = sheet.entry().site().map(Typed::value).map(journal.sites()::get);
        List<FrameSky> skies = files.stream()
                .map(f -> FrameSkies.of(f, sheet.target().value(), site))
                .toList();
        Optional<Darkness> darkness = site.flatMap(s -> darkness(s, night));
        boolean first = sheet.night().value().filter(night::equals).isPresent();
        Optional<RigSheet> rig = sheet.entry().rig().map(Typed::value).map(rigs::get);
        return new EntryNight(
                sheet,
                night,
                files,
                exposure(sheet, files, first),
                new NightSky(skies, hours(darkness.map(Darkness::dark)), hours(darkness.map(Darkness::moonless))),
                rig,
                rig.map(r -> on(r, night)),
                first);
    }

    private static Optional<Darkness> darkness(Site site, LocalDate night) {
        Optional<SkyPlace> place = FrameSkies.place(site);
        return place.map(p -> Darkness.of(night, zone(site, p), p));
    }

    /** As nights are split: the site's zone, else its mean solar time. */
    private static ZoneId zone(Site site, SkyPlace place) {
        return site.zone().orElseGet(() -> ZoneOffset.ofTotalSeconds((int) Math.round(place.longitudeDeg() * 240)));
    }

    private static OptionalDouble hours(Optional<Duration> duration) {
        return duration.map(d -> OptionalDouble.of(d.toSeconds() / 3600.0)).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble exposure(EntrySheet sheet, List<FrameSheet> files, boolean first) {
        boolean singles = !files.isEmpty() && files.stream().allMatch(FrameSheet::counted);
        if (singles) {
            double seconds = files.stream()
                    .map(FrameSheet::report)
                    .map(FrameReport::exposureSeconds)
                    .mapToDouble(s -> s.orElse(0))
                    .sum();
            return seconds > 0 ? OptionalDouble.of(seconds) : OptionalDouble.empty();
        }
        return first
                ? sheet.figure(Figure.EXPOSURE)
                        .map(q -> OptionalDouble.of(q.value()))
                        .orElse(OptionalDouble.empty())
                : OptionalDouble.empty();
    }

    /** The state in force on a date: the last that had begun, else the first. */
    static RigSheet.State on(RigSheet rig, LocalDate night) {
        return rig.states().stream()
                .filter(state -> !state.from().isAfter(night))
                .reduce((earlier, later) -> later)
                .orElse(rig.states().get(0));
    }
}
