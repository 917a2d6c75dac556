package noctuary.site;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import noctuary.entry.Entry;
import noctuary.site.page.Labelled;
import noctuary.site.page.NightsPage;

/** The calendar of nights. */
final class NightPages {
    private static final Address HERE = Address.NIGHTS;

    private final Ledger ledger;
    private final Heads heads;
    private final Charts charts;

    NightPages(Ledger ledger, Heads heads, Charts charts) {
        this.ledger = ledger;
        this.heads = heads;
        this.charts = charts;
    }

    NightsPage page() {
        List<Usage> usage = Usage.of(ledger);
        Map<LocalDate, List<Usage>> nights =
                usage.stream().collect(Collectors.groupingBy(Usage::night, TreeMap::new, Collectors.toList()));
        Map<YearMonth, Map<LocalDate, List<Usage>>> months = new TreeMap<>(Comparator.reverseOrder());
        nights.forEach((night, uses) -> months.computeIfAbsent(YearMonth.from(night), m -> new TreeMap<>())
                .put(night, uses));
        return new NightsPage(
                heads.of(HERE, "Nights", "A calendar of the nights: hours used, and hours lost by cause."),
                totals(usage, nights.size()),
                causes(),
                new TimeParts(ledger).of(usage),
                charts.calendars(nights),
                months.entrySet().stream()
                        .map(e -> month(e.getKey(), e.getValue()))
                        .toList());
    }

    private List<Labelled> totals(List<Usage> usage, int nights) {
        double lost = lost().stream().mapToDouble(Entry.Lost::minutes).sum();
        return List.of(
                new Labelled(nights == 1 ? "night" : "nights", "" + nights),
                new Labelled("hours used", Numerals.fixed(seconds(usage) / 3600, 1)),
                new Labelled("hours lost", Numerals.fixed(lost / 60, 1)));
    }

    private List<Entry.Lost> lost() {
        return ledger.content().entries().stream()
                .flatMap(sheet -> sheet.entry().lost().stream())
                .toList();
    }

    private List<NightsPage.Cause> causes() {
        Map<String, List<Entry.Lost>> byCause = new HashMap<>();
        lost().forEach(lost -> byCause.computeIfAbsent(lost.cause(), cause -> new ArrayList<>())
                .add(lost));
        double most =
                byCause.values().stream().mapToDouble(NightPages::minutes).max().orElse(1);
        return byCause.entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<String, List<Entry.Lost>> e) -> -minutes(e.getValue()))
                        .thenComparing(Map.Entry::getKey))
                .map(e -> new NightsPage.Cause(
                        e.getKey(),
                        Numerals.duration(60 * minutes(e.getValue())),
                        e.getValue().size(),
                        (int) Math.round(100 * minutes(e.getValue()) / most)))
                .toList();
    }

    private NightsPage.Month month(YearMonth month, Map<LocalDate, List<Usage>> nights) {
        double seconds =
                nights.values().stream().mapToDouble(NightPages::seconds).sum();
        return new NightsPage.Month(
                month.toString(),
                Dates.month(month),
                Numerals.fixed(seconds / 3600, 1),
                weeks(month, nights),
                nights.entrySet().stream()
                        .map(e -> night(e.getKey(), e.getValue()))
                        .toList());
    }

    private static List<List<NightsPage.Day>> weeks(YearMonth month, Map<LocalDate, List<Usage>> nights) {
        List<List<NightsPage.Day>> weeks = new ArrayList<>();
        LocalDate monday =
                month.atDay(1).minusDays(month.atDay(1).getDayOfWeek().ordinal());
        for (LocalDate first = monday; !first.isAfter(month.atEndOfMonth()); first = first.plusWeeks(1)) {
            List<NightsPage.Day> week = new ArrayList<>();
            for (DayOfWeek weekday : DayOfWeek.values()) {
                LocalDate date = first.plusDays(weekday.ordinal());
                week.add(YearMonth.from(date).equals(month) ? day(date, nights.get(date)) : null);
            }
            weeks.add(week);
        }
        return weeks;
    }

    private static NightsPage.Day day(LocalDate date, List<Usage> uses) {
        return uses == null
                ? new NightsPage.Day(date.getDayOfMonth(), "", "")
                : new NightsPage.Day(date.getDayOfMonth(), "#night-" + date, Numerals.fixed(seconds(uses) / 3600, 1));
    }

    private NightsPage.Night night(LocalDate date, List<Usage> uses) {
        List<NightsPage.Use> used = uses.stream()
                .map(use -> new NightsPage.Use(
                        ledger.entryLink(HERE, use.sheet()),
                        use.seconds() > 0 ? Numerals.duration(use.seconds()) : "",
                        ledger.rigLink(HERE, use.sheet()),
                        ledger.siteName(use.sheet())))
                .toList();
        List<NightsPage.Lost> lost = Usage.lostOn(date, uses).stream()
                .map(l -> new NightsPage.Lost(Numerals.duration(l.minutes() * 60), l.cause(), l.note()))
                .toList();
        return new NightsPage.Night(
                "night-" + date, Dates.reading(date), date.toString(), Numerals.duration(seconds(uses)), used, lost);
    }

    private static double seconds(List<Usage> uses) {
        return uses.stream().mapToDouble(Usage::seconds).sum();
    }

    private static double minutes(List<Entry.Lost> lost) {
        return lost.stream().mapToDouble(Entry.Lost::minutes).sum();
    }
}
