package noctuary.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import noctuary.entry.Entry;

/** Minutes lost to one cause on either side, in all. */
public record Loss(String cause, double minutesBefore, double minutesAfter) {

    /** The largest first. */
    static List<Loss> of(Change change) {
        Map<String, double[]> byCause = new TreeMap<>();
        add(change.before(), 0, byCause);
        add(change.after(), 1, byCause);
        List<Loss> losses = new ArrayList<>();
        byCause.forEach((cause, minutes) -> losses.add(new Loss(cause, minutes[0], minutes[1])));
        losses.sort(Comparator.comparingDouble((Loss l) -> -l.minutesBefore() - l.minutesAfter())
                .thenComparing(Loss::cause));
        return losses;
    }

    private static void add(Side side, int at, Map<String, double[]> byCause) {
        for (EntryNight night : side.nights()) {
            List<Entry.Lost> lost = night.first() ? night.sheet().entry().lost() : List.of();
            lost.forEach(l -> byCause.computeIfAbsent(l.cause(), c -> new double[2])[at] += l.minutes());
        }
    }
}
