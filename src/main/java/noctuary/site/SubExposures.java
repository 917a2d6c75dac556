package noctuary.site;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import noctuary.fits.FrameHeader;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameSheet;

/** What an exposure is made of, as {@code 4 × 10 min}. */
final class SubExposures {
    /** More kinds than these are counted only. */
    private static final int MOST = 3;

    private SubExposures() {}

    /** Of the counted frames, else as the stack's header says, else as typed; empty where nothing tells it. */
    static String of(EntrySheet sheet) {
        Map<Double, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
        List<FrameSheet> counted =
                sheet.frames().stream().filter(FrameSheet::counted).toList();
        counted.forEach(frame -> frame.report().exposureSeconds().ifPresent(s -> counts.merge(s, 1, Integer::sum)));
        if (counted.isEmpty()) {
            sheet.stack().flatMap(FrameSheet::header).ifPresent(header -> stacked(counts, header));
        }
        if (counted.isEmpty() && sheet.stack().isEmpty()) {
            sheet.entry()
                    .exposure()
                    .forEach(typed -> counts.merge(
                            typed.value().seconds().doubleValue(), typed.value().count(), Integer::sum));
        }
        if (counts.size() > MOST) {
            int all = counts.values().stream().mapToInt(Integer::intValue).sum();
            return Numerals.count(all, "exposure", "exposures");
        }
        return counts.entrySet().stream()
                .map(e -> e.getValue() + "\u00a0×\u00a0" + Numerals.duration(e.getKey()))
                .collect(Collectors.joining(" + "));
    }

    /** Count and length of one exposure; a card with the total tells nothing of single ones. */
    private static void stacked(Map<Double, Integer> counts, FrameHeader header) {
        if (header.totalSeconds().isEmpty() && header.exposures().isPresent()) {
            header.exposureSeconds()
                    .ifPresent(one ->
                            counts.put(one.value(), header.exposures().get().value()));
        }
    }
}
