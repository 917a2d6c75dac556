package noctuary.advice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import noctuary.entry.Journal;
import noctuary.measure.EntrySheets;
import noctuary.measure.Meter;
import noctuary.measure.RigSheets;
import noctuary.measure.SmallJournal;

/** A keeper with a dozen nights behind them, whose next night is judged against those. */
final class PlantedKeeper {
    private static final int BEHIND = 12;

    private final Path folder;
    private final List<EntryContext> behind = new ArrayList<>();

    PlantedKeeper(Path folder, long seed) {
        this.folder = folder;
        for (int n = 0; n < BEHIND; n++) {
            behind.add(context(new PlantedImage(PlantedImage.Trouble.NONE, seed * 1000 + n), "past" + n, n));
        }
    }

    /** What is said of one more night. */
    List<Finding> next(PlantedImage night) {
        List<EntryContext> all = new ArrayList<>(behind);
        all.add(context(night, "next", 100));
        return LimitReports.of(all).get("next").findings();
    }

    /** One night alone. */
    EntryContext alone(PlantedImage night) {
        return context(night, "alone", 50);
    }

    private EntryContext context(PlantedImage night, String slug, int day) {
        Path root = folder.resolve(slug);
        SmallJournal small = new SmallJournal(root);
        PlantedImage.prepare(small);
        night.write(small, slug, day);
        Journal journal = Journal.read(root);
        var sheet =
                new EntrySheets(journal, Meter::measure).of(journal.entries().get(0));
        EntryContext context = EntryContext.of(sheet, journal, RigSheets.of(journal, List.of(sheet)));
        remove(root);
        return context;
    }

    private static void remove(Path root) {
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
