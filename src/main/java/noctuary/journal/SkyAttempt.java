package noctuary.journal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;
import noctuary.measure.MeasuredFiles;
import noctuary.measure.Measurement;
import noctuary.measure.Meter;
import noctuary.measure.TargetSheet;

/**
 * The file that stands for an attempt when attempts are laid on each other: stack or sharpest frame, else the last
 * finished picture.
 *
 * @param digest identity of the file's bytes
 */
record SkyAttempt(String slug, Path file, Measurement measurement, String digest) {

    /** Oldest first; attempts without a readable file are left out. */
    static List<SkyAttempt> of(TargetSheet target, Map<String, EntrySheet> entries, MeasuredFiles files) {
        List<SkyAttempt> attempts = new ArrayList<>();
        for (TargetSheet.Attempt attempt : target.attempts()) {
            Optional.ofNullable(entries.get(attempt.slug()))
                    .flatMap(sheet -> of(sheet, files))
                    .ifPresent(attempts::add);
        }
        return attempts;
    }

    private static Optional<SkyAttempt> of(EntrySheet sheet, MeasuredFiles files) {
        Optional<Path> file = sheet.shownFile().map(shown -> shown.path()).or(() -> lastPicture(sheet.entry(), files));
        return file.filter(f -> files.of(f).readable())
                .flatMap(f -> files.digest(f)
                        .map(digest -> new SkyAttempt(sheet.entry().slug(), f, files.of(f), digest)));
    }

    private static Optional<Path> lastPicture(Entry entry, MeasuredFiles files) {
        return entry.versions().stream()
                .flatMap(version -> version.image().stream())
                .filter(image -> files.of(image).readable())
                .reduce((first, last) -> last);
    }

    /** Whether it is a finished picture, whose first row is the top one. */
    boolean finished() {
        return Meter.isPicture(file);
    }
}
