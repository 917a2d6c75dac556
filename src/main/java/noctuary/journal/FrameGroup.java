package noctuary.journal;

import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.measure.ExposureKey;

/** Frames of one target, night and rig, which make one entry. */
record FrameGroup(String slug, List<SeenFrame> frames) {
    FrameGroup {
        frames = List.copyOf(frames);
    }

    SeenFrame first() {
        return frames.get(0);
    }

    List<Path> singles() {
        return paths(frame -> !frame.isStack());
    }

    List<Path> stacks() {
        return paths(SeenFrame::isStack);
    }

    private List<Path> paths(Predicate<SeenFrame> which) {
        return frames.stream().filter(which).map(SeenFrame::path).sorted().toList();
    }

    /**
     * Count by filter and seconds, in that order. Stacks, copies of an exposure and frames that do not tell their
     * exposure are left out.
     */
    Map<Exposure, Integer> exposures() {
        Map<Exposure, Integer> counts = new TreeMap<>();
        Set<String> seen = new HashSet<>();
        for (SeenFrame frame : frames) {
            FrameHeader h = frame.header();
            if (!frame.isStack() && ExposureKey.of(h).map(seen::add).orElse(true)) {
                h.exposureSeconds()
                        .ifPresent(s -> counts.merge(
                                new Exposure(h.filter().map(Cited::value).orElse(""), s.value()), 1, Integer::sum));
            }
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
