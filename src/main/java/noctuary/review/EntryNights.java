package noctuary.review;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import noctuary.entry.Journal;
import noctuary.entry.Site;
import noctuary.entry.Typed;
import noctuary.keep.Memo;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.measure.NightCourse;
import noctuary.measure.RigSheet;
import noctuary.sky.Catalogue;
import noctuary.sky.Darkness;
import noctuary.sky.SkyPlace;

/** Splits entries into nights. */
final class EntryNights {
    private static final Comparator<EntryNight> BY_DATE =
            Comparator.comparing(EntryNight::night).thenComparing(EntryNight::slug);

    private final Journal journal;
    private final Map<String, RigSheet> rigs;
    private final Memo memo;

    EntryNights(Journal journal, Map<String, RigSheet> rigs, Memo memo) {
        this.journal = journal;
        this.rigs = rigs;
        this.memo = memo;
    }

    /** By date; entries whose night nobody tells are not among them. */
    List<EntryNight> of(List<EntrySheet> sheets) {
        return sheets.parallelStream()
                .flatMap(sheet -> nights(sheet).stream())
                .sorted(BY_DATE)
                .toList();
    }

    private List<EntryNight> nights(EntrySheet sheet) {
        return memo
                .recall("nights", NightTraits.All.PACKING, sheet.key(), () -> new NightTraits.All(read(sheet)))
                .nights()
                .stream()
                .map(traits -> night(sheet, traits))
                .toList();
    }

    private List<NightTraits> read(EntrySheet sheet) {
        Optional<LocalDate> first = sheet.night().value();
        if (first.isEmpty()) {
            return List.of();
        }
        List<FrameSheet> counted =
                sheet.frames().stream().filter(FrameSheet::counted).toList();
        List<NightTraits> nights = new ArrayList<>();
        for (NightCourse course : sheet.courses()) {
            nights.add(traits(sheet, course.night(), timed(counted, course)));
        }
        if (nights.isEmpty()) {
            List<FrameSheet> files = counted.isEmpty()
                    ? sheet.stack().filter(EntryNights::readable).stream().toList()
                    : counted;
            nights.add(traits(sheet, first.get(), files));
        }
        return nights;
    }

    private EntryNight night(EntrySheet sheet, NightTraits traits) {
        Optional<RigSheet> rig = sheet.entry().rig().map(Typed::value).map(rigs::get);
        return new EntryNight(sheet, traits, rig, rig.map(r -> on(r, traits.night())));
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

    private NightTraits traits(EntrySheet sheet, LocalDate night, List<FrameSheet> files) {
        Optional<Site> site = sheet.entry().site().map(Typed::value).map(journal.sites()::get);
        List<FrameSky> skies = files.stream()
                .map(f -> FrameSkies.of(f, sheet.target().value(), site))
                .toList();
        Optional<Darkness> darkness = site.flatMap(s -> darkness(s, night));
        boolean first = sheet.night().value().filter(night::equals).isPresent();
        List<FrameSheet> frames = sheet.frames();
        NightTraits bare = new NightTraits(
                night,
                files.stream().map(frames::indexOf).toList(),
                exposure(sheet, files, first),
                NightSky.of(skies, hours(darkness.map(Darkness::dark)), hours(darkness.map(Darkness::moonless))),
                first,
                files.stream().anyMatch(f -> f.report().kind() != FrameReport.Kind.SINGLE),
                sheet.target().map(Catalogue::canonicalName).orElse(""),
                filter(sheet, files),
                "",
                List.of(),
                richest(files),
                Map.of(),
                skies);
        EntryNight known = night(sheet, bare);
        Map<String, Reading> readings = new LinkedHashMap<>();
        Gauges.all()
                .forEach(
                        gauge -> readings.put(gauge.measure().id(), gauge.read().apply(known)));
        return bare.telling(SkyReadings.recipe(known), OwnScatter.widths(files), readings);
    }

    private static Optional<NightTraits.Richest> richest(List<FrameSheet> files) {
        return IntStream.range(0, files.size())
                .boxed()
                .reduce((a, b) ->
                        files.get(b).stars().size() > files.get(a).stars().size() ? b : a)
                .map(at ->
                        new NightTraits.Richest(at, files.get(at).measurement().content()));
    }

    private static String filter(EntrySheet sheet, List<FrameSheet> files) {
        Stream<String> told = files.isEmpty()
                ? sheet.entry().exposure().stream().map(e -> e.value().filter()).filter(f -> !f.isEmpty())
                : files.stream().flatMap(f -> f.report().filter().stream());
        return told.distinct().sorted().collect(Collectors.joining(", "));
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
                ? sheet.number(Figure.EXPOSURE)
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
