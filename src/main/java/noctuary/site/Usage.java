package noctuary.site;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import noctuary.entry.Entry;
import noctuary.entry.Site;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.sky.Night;

/**
 * How much exposure each night gave an entry. Counted frames fall into their nights; exposure that is only known as a
 * total falls into the entry's night.
 */
record Usage(EntrySheet sheet, LocalDate night, double seconds) {

    static List<Usage> of(Ledger ledger) {
        List<Usage> all = new ArrayList<>();
        for (EntrySheet sheet : ledger.content().entries()) {
            byNight(sheet, ledger).forEach((night, seconds) -> all.add(new Usage(sheet, night, seconds)));
        }
        all.sort(Comparator.comparing(Usage::night)
                .thenComparing(use -> use.sheet().entry().slug()));
        return all;
    }

    /** What was lost on a night: the losses of the entries that bear its date. */
    static List<Entry.Lost> lostOn(LocalDate night, List<Usage> uses) {
        return uses.stream()
                .filter(use -> use.sheet().night().value().filter(night::equals).isPresent())
                .flatMap(use -> use.sheet().entry().lost().stream())
                .toList();
    }

    private static Map<LocalDate, Double> byNight(EntrySheet sheet, Ledger ledger) {
        Map<LocalDate, Double> nights = new TreeMap<>();
        sheet.nights().forEach(night -> nights.put(night, 0.0));
        ZoneId zone = ledger.site(sheet).flatMap(Site::zone).orElse(ZoneOffset.UTC);
        if (!sheet.nights().isEmpty()) {
            sheet.exposed()
                    .forEach(frame -> nights.merge(
                            nearest(Night.of(frame.taken(), zone), sheet.nights()), frame.seconds(), Double::sum));
        }
        boolean framesTell = nights.values().stream().anyMatch(seconds -> seconds > 0);
        Optional<LocalDate> night = sheet.night().value();
        Optional<Double> total = sheet.number(Figure.EXPOSURE).map(q -> q.value());
        night.ifPresent(date -> nights.merge(date, framesTell ? 0 : total.orElse(0.0), Double::sum));
        return nights;
    }

    private static LocalDate nearest(LocalDate date, List<LocalDate> nights) {
        return nights.stream()
                .min(Comparator.comparingLong(night -> Math.abs(night.toEpochDay() - date.toEpochDay())))
                .orElse(date);
    }
}
