package noctuary.advice;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import noctuary.keep.Digest;
import noctuary.keep.Memo;
import noctuary.keep.Packing;
import noctuary.sky.Darkness;
import noctuary.sky.SkyPlace;

/**
 * Where the dark hours went.
 *
 * @param months with at least one night out, newest first
 * @param rigs by name
 * @param causes that are not weather, most expensive first
 */
public record TimeLedger(List<Row> months, List<Row> rigs, List<CauseCost> causes) {
    public TimeLedger {
        months = List.copyOf(months);
        rigs = List.copyOf(rigs);
        causes = List.copyOf(causes);
    }

    /** Where and in which zone the hours of darkness are counted. */
    public record Place(SkyPlace sky, ZoneId zone) {}

    /**
     * @param name of the rig, or the month as 2025-06
     * @param darkHours Sun more than 18° below the horizon, all nights of the month; absent for rigs and without a place
     * @param darkHoursOut the same of the nights with an entry
     * @param clearHours at the least: used, and lost to anything but weather
     * @param lostHours by cause, most first
     */
    public record Row(
            String name,
            int nights,
            OptionalDouble darkHours,
            OptionalDouble darkHoursOut,
            double clearHours,
            double usedHours,
            Map<String, Double> lostHours) {}

    /** Dark hours of each night of a month. */
    private record DarkMonth(List<Double> hours) {
        static final Packing<DarkMonth> PACKING = Packing.of(DarkMonth.class);

        static DarkMonth of(YearMonth month, Place place) {
            return new DarkMonth(month.atDay(1)
                    .datesUntil(month.plusMonths(1).atDay(1))
                    .map(night ->
                            Darkness.dark(night, place.zone(), place.sky()).toSeconds() / 3600.0)
                    .toList());
        }
    }

    /** @param place of most nights; absent when no site tells its coordinates */
    public static TimeLedger of(List<Spent> spent, Optional<Place> place) {
        return of(spent, place, Memo.NONE);
    }

    /** @param memo keeps how dark the months were */
    public static TimeLedger of(List<Spent> spent, Optional<Place> place, Memo memo) {
        Map<YearMonth, DarkMonth> darkness = new TreeMap<>();
        place.ifPresent(p -> spent.forEach(
                s -> darkness.computeIfAbsent(YearMonth.from(s.night()), month -> darkness(month, p, memo))));
        Map<LocalDate, Double> dark = new TreeMap<>();
        place.ifPresent(p -> spent.forEach(s -> dark.put(
                s.night(),
                darkness.get(YearMonth.from(s.night())).hours().get(s.night().getDayOfMonth() - 1))));
        Map<String, List<Spent>> months = new TreeMap<>((a, b) -> b.compareTo(a));
        Map<String, List<Spent>> rigs = new TreeMap<>();
        for (Spent s : spent) {
            String month = YearMonth.from(s.night()).toString();
            months.computeIfAbsent(month, k -> new ArrayList<>()).add(s);
            rigs.computeIfAbsent(s.rig().isEmpty() ? "rig not told" : s.rig(), k -> new ArrayList<>())
                    .add(s);
        }
        return new TimeLedger(
                rows(months, dark, month -> ofMonth(darkness.get(YearMonth.parse(month)))),
                rows(rigs, dark, rig -> OptionalDouble.empty()),
                CauseCost.of(spent));
    }

    private static List<Row> rows(
            Map<String, List<Spent>> groups, Map<LocalDate, Double> dark, Function<String, OptionalDouble> available) {
        List<Row> rows = new ArrayList<>();
        groups.forEach((name, own) -> rows.add(row(name, own, dark, available.apply(name))));
        return rows;
    }

    private static Row row(String name, List<Spent> own, Map<LocalDate, Double> dark, OptionalDouble available) {
        List<LocalDate> nights = own.stream().map(Spent::night).distinct().toList();
        double used = own.stream().mapToDouble(Spent::seconds).sum() / 3600;
        Map<String, Double> lost = lost(own);
        double wasted = lost.entrySet().stream()
                .filter(e -> !Cause.isWeather(e.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        OptionalDouble out = dark.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(nights.stream().mapToDouble(dark::get).sum());
        return new Row(name, nights.size(), available, out, used + wasted, used, lost);
    }

    private static Map<String, Double> lost(List<Spent> own) {
        Map<String, Double> sums = new TreeMap<>();
        own.forEach(s -> s.lost().forEach(l -> sums.merge(l.cause(), l.minutes() / 60, Double::sum)));
        Map<String, Double> sorted = new LinkedHashMap<>();
        sums.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .forEach(e -> sorted.put(e.getKey(), e.getValue()));
        return sorted;
    }

    private static OptionalDouble ofMonth(DarkMonth month) {
        return month == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        month.hours().stream().mapToDouble(hours -> hours).sum());
    }

    private static DarkMonth darkness(YearMonth month, Place place, Memo memo) {
        String key = new Digest().text(place.toString()).text(month.toString()).hex();
        return memo.recall("dark-months", DarkMonth.PACKING, key, () -> DarkMonth.of(month, place));
    }
}
