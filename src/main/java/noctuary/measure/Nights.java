package noctuary.measure;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import noctuary.entry.Entry;
import noctuary.entry.Site;
import noctuary.fact.Fact;
import noctuary.fact.Origin;
import noctuary.fact.Origin.Input;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.sky.Night;

/** The nights of an entry: local noon to local noon at the site, named by the evening's date. */
final class Nights {
    static final String METHOD = "night";

    private final TreeMap<LocalDate, Origin> nights = new TreeMap<>();

    Nights(Entry entry, Optional<Site> site, List<FrameSheet> frames, Optional<FrameSheet> stack) {
        Clock clock = Clock.at(site);
        frames.stream().filter(FrameSheet::counted).forEach(f -> add(clock, f));
        if (nights.isEmpty()) {
            stack.ifPresent(s -> add(clock, s));
        }
        if (nights.isEmpty()) {
            entry.date().ifPresent(d -> nights.put(d.value(), d.origin()));
        }
        if (nights.isEmpty()) {
            slugDate(entry)
                    .ifPresent(d -> nights.put(d, new Origin.Typed(entry.file(), 0, "name of the note", entry.slug())));
        }
    }

    /** The zone that splits nights at this site. */
    static ZoneId zone(Optional<Site> site) {
        return Clock.at(site).zone();
    }

    List<LocalDate> all() {
        return new ArrayList<>(nights.keySet());
    }

    /** The first night. */
    Fact<LocalDate> first() {
        return nights.isEmpty()
                ? Fact.missing("no frame has a date, and the note has no night")
                : Fact.of(nights.firstKey(), nights.firstEntry().getValue());
    }

    private void add(Clock clock, FrameSheet frame) {
        Optional<Cited<Instant>> taken = frame.header().flatMap(FrameHeader::taken);
        taken.ifPresent(t -> nights.putIfAbsent(
                Night.of(t.value(), clock.zone()),
                new Origin.Derived(
                        "local noon to local noon, " + clock.told(),
                        METHOD,
                        List.of(new Input(
                                "start of the first exposure",
                                t.text(),
                                new Origin.Header(frame.name(), t.card(), t.text()))))));
    }

    private static Optional<LocalDate> slugDate(Entry entry) {
        if (entry.slug().length() < 10) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(entry.slug().substring(0, 10)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The zone that splits nights; mean solar time where the site has a longitude but no zone. */
    private record Clock(ZoneId zone, String told) {
        static Clock at(Optional<Site> site) {
            if (site.flatMap(Site::zone).isPresent()) {
                return new Clock(site.get().zone().get(), "in the site's time zone");
            }
            if (site.isPresent() && site.get().longitudeDeg().isPresent()) {
                int seconds = (int) Math.round(site.get().longitudeDeg().getAsDouble() * 240);
                return new Clock(ZoneOffset.ofTotalSeconds(seconds), "in the site's mean solar time");
            }
            return new Clock(ZoneOffset.UTC, "in UTC, as no time zone is known");
        }
    }
}
