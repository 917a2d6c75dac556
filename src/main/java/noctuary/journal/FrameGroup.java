package noctuary.journal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;

/** Frames of one target and night. */
final class FrameGroup {
    private final String slug;
    private final List<SeenFrame> frames = new ArrayList<>();

    FrameGroup(String slug) {
        this.slug = slug;
    }

    void add(SeenFrame frame) {
        frames.add(frame);
    }

    String slug() {
        return slug;
    }

    SeenFrame first() {
        return frames.get(0);
    }

    List<Path> paths() {
        return frames.stream().map(SeenFrame::path).sorted().toList();
    }

    /** Count by filter and seconds, in that order; frames that do not tell their exposure are left out. */
    Map<Exposure, Integer> exposures() {
        Map<Exposure, Integer> counts = new TreeMap<>();
        for (SeenFrame frame : frames) {
            FrameHeader h = frame.header();
            h.exposureSeconds()
                    .ifPresent(s -> counts.merge(
                            new Exposure(h.filter().map(Cited::value).orElse(""), s.value()), 1, Integer::sum));
        }
        return Collections.unmodifiableMap(counts);
    }

    record Exposure(String filter, double seconds) implements Comparable<Exposure> {
        @Override
        public int compareTo(Exposure other) {
            int byFilter = filter.compareTo(other.filter);
            return byFilter != 0 ? byFilter : Double.compare(seconds, other.seconds);
        }
    }
}
