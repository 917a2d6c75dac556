package noctuary.measure;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import noctuary.fact.Fact;
import noctuary.fact.Quantity;

/** The files of an entry, measured, and what rests on them, with origins; components as {@link EntrySheet} names them. */
record EntryFiles(
        Map<String, Fact<Quantity>> exposureByFilter,
        Map<Figure, Fact<Quantity>> figures,
        List<FrameSheet> frames,
        Optional<FrameSheet> stack,
        Optional<FrameSheet> shown,
        List<NightCourse> courses) {
    EntryFiles {
        exposureByFilter = Collections.unmodifiableMap(new LinkedHashMap<>(exposureByFilter));
        figures = figures.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(figures));
        frames = List.copyOf(frames);
        courses = List.copyOf(courses);
    }

    /** Frames, then the stack. */
    Stream<FrameSheet> all() {
        return Stream.concat(frames.stream(), stack.stream());
    }
}
