package noctuary.review;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.stats.Robust;

/** Medians over the files of a night. */
final class Readings {
    static final String NO_FILE = "there is no frame or stack";

    private Readings() {}

    /** @param why when no file has a value */
    static Reading median(EntryNight night, String why, BiFunction<FrameSheet, FrameSky, OptionalDouble> value) {
        List<Double> known = new ArrayList<>();
        List<FrameSheet> files = night.files();
        for (int i = 0; i < files.size(); i++) {
            value.apply(files.get(i), night.traits().skies().get(i)).ifPresent(known::add);
        }
        if (known.isEmpty()) {
            return Reading.missing(files.isEmpty() ? NO_FILE : why);
        }
        return Reading.of(Robust.median(known.stream().mapToDouble(v -> v).toArray()), known.size());
    }

    /** As {@link #median}, of single exposures only: in a stack the pixels are no longer the sensor's. */
    static Reading ofSingles(EntryNight night, String why, BiFunction<FrameSheet, FrameSky, OptionalDouble> value) {
        return night.stacked()
                ? Reading.missing("only a stack is left, and a stack hides it")
                : median(night, why, value);
    }

    static boolean single(FrameSheet file) {
        return file.report().kind() == FrameReport.Kind.SINGLE;
    }
}
