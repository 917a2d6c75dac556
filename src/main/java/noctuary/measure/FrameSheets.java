package noctuary.measure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.entry.Entry;
import noctuary.fits.FrameHeader;
import noctuary.fits.FrameKind;

/** The files of an entry as measured: which of them count as exposure, and why the others do not. */
final class FrameSheets {
    private final Entry entry;
    private final List<Path> tops;
    private final Function<Path, Measurement> lookup;
    private final Map<String, String> seenPixels = new HashMap<>();
    private final Map<String, String> seenExposures = new HashMap<>();

    /** @param tops the journal and its archive folders; how these are called is nobody's business */
    FrameSheets(Entry entry, List<Path> tops, Function<Path, Measurement> lookup) {
        this.entry = entry;
        this.tops = List.copyOf(tops);
        this.lookup = lookup;
    }

    List<FrameSheet> frames() {
        List<FrameSheet> sheets = new ArrayList<>();
        for (Path path : entry.frames()) {
            Measurement m = lookup.apply(path);
            sheets.add(sheet(path, m, whyNotCounted(name(path), m)));
        }
        return sheets;
    }

    Optional<FrameSheet> stack() {
        return entry.stack().map(path -> sheet(path, lookup.apply(path), Optional.of("it is the stack")));
    }

    private FrameSheet sheet(Path path, Measurement m, Optional<String> notCounted) {
        String name = name(path);
        FrameKind kind = m.header().map(FrameHeader::kind).orElse(FrameKind.UNTOLD);
        return new FrameSheet(name, path, kind, FrameReports.of(name, m, OptionalDouble.empty()), m, notCounted);
    }

    /** Relative to the entry where it lies inside, else the last two names of the way from the journal or archive. */
    private String name(Path path) {
        Path folder = entry.folder();
        Path shown = path.startsWith(folder) ? folder.relativize(path) : end(path);
        return shown.toString().replace('\\', '/');
    }

    private Path end(Path path) {
        Path below = tops.stream()
                .filter(path::startsWith)
                .map(top -> top.relativize(path))
                .min(Comparator.comparingInt(Path::getNameCount))
                .orElse(path.getFileName());
        return below.subpath(Math.max(0, below.getNameCount() - 2), below.getNameCount());
    }

    private Optional<String> whyNotCounted(String name, Measurement m) {
        if (!m.readable()) {
            return Optional.of("it cannot be read");
        }
        FrameHeader header = m.header().orElse(null);
        if (header == null) {
            return Optional.of("it is a picture, not a frame");
        }
        if (header.kind().isCalibration() || header.kind() == FrameKind.OTHER) {
            return Optional.of("it is not a light frame");
        }
        String samePixels = seenPixels.putIfAbsent(m.pixelDigest(), name);
        if (samePixels != null) {
            return Optional.of("it has the same pixels as " + samePixels);
        }
        return ExposureKey.of(header)
                .map(key -> key + "|" + m.width() + "x" + m.height())
                .map(key -> seenExposures.putIfAbsent(key, name))
                .map(first -> "it is the same exposure as " + first);
    }
}
