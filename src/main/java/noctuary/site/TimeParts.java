package noctuary.site;

import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import noctuary.advice.CauseCost;
import noctuary.advice.Spent;
import noctuary.advice.TimeLedger;
import noctuary.entry.Site;
import noctuary.site.page.TimePart;
import noctuary.sky.SkyPlace;

/** The ledger of time as printed. */
final class TimeParts {
    private final Ledger ledger;

    TimeParts(Ledger ledger) {
        this.ledger = ledger;
    }

    TimePart of(List<Usage> usage) {
        Optional<Site> site = usualSite();
        List<Spent> spent = usage.stream().map(this::spent).toList();
        TimeLedger time = TimeLedger.of(spent, site.map(TimeParts::place), ledger.memo());
        return new TimePart(
                site.map(Site::name).orElse(""),
                time.months().stream()
                        .map(row -> row(Dates.month(YearMonth.parse(row.name())), row))
                        .toList(),
                time.rigs().stream().map(row -> row(row.name(), row)).toList(),
                time.causes().stream().map(TimeParts::cause).toList());
    }

    private static TimePart.CauseRow cause(CauseCost cost) {
        return new TimePart.CauseRow(
                cost.cause(),
                cost.times(),
                Numerals.duration(60 * cost.minutes()),
                cost.ratio().isPresent()
                        ? Numerals.fixed(
                                cost.ratio().getAsDouble(), cost.ratio().getAsDouble() < 10 ? 1 : 0)
                        : "",
                Numerals.fixed(cost.magnitudes(), 2));
    }

    private Spent spent(Usage use) {
        boolean bears = use.sheet().night().value().filter(use.night()::equals).isPresent();
        return new Spent(
                use.night(),
                ledger.rigName(use.sheet()),
                use.seconds(),
                bears ? use.sheet().entry().lost() : List.of());
    }

    /** The site of the settings, where it tells its coordinates; else the first that does. */
    private Optional<Site> usualSite() {
        var sites = ledger.content().journal().sites();
        return ledger.content()
                .journal()
                .settings()
                .site()
                .map(sites::get)
                .filter(TimeParts::told)
                .or(() -> sites.values().stream().filter(TimeParts::told).findFirst());
    }

    private static boolean told(Site site) {
        return site.latitudeDeg().isPresent() && site.longitudeDeg().isPresent();
    }

    private static TimeLedger.Place place(Site site) {
        ZoneId zone = site.zone().orElse(ZoneOffset.UTC);
        return new TimeLedger.Place(
                new SkyPlace(
                        site.latitudeDeg().getAsDouble(), site.longitudeDeg().getAsDouble()),
                zone);
    }

    private static TimePart.Row row(String name, TimeLedger.Row row) {
        String lost = row.lostHours().entrySet().stream()
                .map(e -> Numerals.fixed(e.getValue(), 1) + " " + e.getKey())
                .collect(Collectors.joining(", "));
        return new TimePart.Row(
                name,
                row.nights(),
                Numerals.fixed(row.darkHours(), 0),
                Numerals.fixed(row.darkHoursOut(), 1),
                Numerals.fixed(row.clearHours(), 1),
                Numerals.fixed(row.usedHours(), 1),
                lost);
    }
}
