package noctuary.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.stream.Collectors;
import noctuary.entry.Journal;
import noctuary.keep.Digest;
import noctuary.keep.Packing;
import noctuary.measure.EntrySheet;

/** The lines of {@code data/frames.csv}, entry by entry: frames of many years at once do not fit into memory. */
final class FrameLines {
    private final Ledger ledger;
    private final Tables tables;
    private final String telling;

    private record Lines(String text) {
        static final Packing<Lines> PACKING = Packing.of(Lines.class);
    }

    FrameLines(Ledger ledger) {
        this.ledger = ledger;
        this.tables = new Tables(ledger);
        Journal journal = ledger.content().journal();
        this.telling = journal.settings() + " " + journal.root();
    }

    String all() {
        return ledger.content().entries().parallelStream().map(this::of).collect(Collectors.joining());
    }

    private String of(EntrySheet sheet) {
        String key = sheet.key().isEmpty()
                ? ""
                : new Digest().text(sheet.key()).text(telling).hex();
        return ledger.memo()
                .recall("frame-lines", Lines.PACKING, key, () -> new Lines(lines(sheet)))
                .text();
    }

    private String lines(EntrySheet sheet) {
        try {
            return Downloads.csv(Columns.FRAMES, false, tables.frames(sheet));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
