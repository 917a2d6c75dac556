package noctuary.measure;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Entry;
import noctuary.fact.Fact;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;

/**
 * All that is known about one entry.
 *
 * @param nights all nights with frames, ascending
 * @param exposureByFilter by filter as the keeper or the header wrote it, most exposure first
 * @param figures every {@link Figure}, known or missing with a reason
 * @param stack measured, when there is one
 * @param courses of the counted frames, one a night, ascending
 * @param shown the file whose stars and picture stand for the entry: the stack, else the sharpest frame
 */
public record EntrySheet(
        Entry entry,
        Fact<String> target,
        Fact<LocalDate> night,
        List<LocalDate> nights,
        Map<String, Fact<Quantity>> exposureByFilter,
        Map<Figure, Fact<Quantity>> figures,
        List<FrameSheet> frames,
        Optional<FrameSheet> stack,
        Optional<FrameSheet> shown,
        List<NightCourse> courses,
        List<Problem> problems) {
    public EntrySheet {
        nights = List.copyOf(nights);
        exposureByFilter = Collections.unmodifiableMap(new LinkedHashMap<>(exposureByFilter));
        figures = Collections.unmodifiableMap(new EnumMap<>(figures));
        frames = List.copyOf(frames);
        courses = List.copyOf(courses);
        problems = List.copyOf(problems);
    }

    public Fact<Quantity> figure(Figure figure) {
        return figures.getOrDefault(figure, Fact.missing("not looked for"));
    }

    /** Star widths of the files that {@link Figure#FWHM_ARCSEC} comes from: the median of each percentile over them. */
    public FrameReport.Spread fwhmSpreadArcsec() {
        return StarSpread.fwhmArcsec(StarFigures.sources(frames, stack));
    }
}
