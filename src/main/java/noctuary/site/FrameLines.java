package noctuary.site;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import noctuary.entry.Journal;
import noctuary.keep.Digest;
import noctuary.keep.Drawer;
import noctuary.keep.Packing;
import noctuary.measure.EntrySheet;
import noctuary.site.page.DownloadsPage;

/** The lines of {@code data/frames.csv}, entry by entry: frames of many years at once do not fit into memory. */
final class FrameLines {
    private final Ledger ledger;
    private final Tables tables;
    private final String telling;
    private final Drawer<Lines> kept;

    private record Lines(String text) {
        static final Packing<Lines> PACKING = Packing.of(Lines.class);
    }

    FrameLines(Ledger ledger) {
        this.ledger = ledger;
        this.tables = new Tables(ledger);
        Journal journal = ledger.content().journal();
        this.telling = journal.settings() + " " + journal.root();
        this.kept = ledger.memo().drawer("frame-lines", Lines.PACKING);
    }

    /** Stands for all lines; empty when a file of an entry has no identity. */
    String shown() {
        Digest digest = new Digest().text(telling);
        for (EntrySheet sheet : ledger.content().entries()) {
            if (sheet.key().isEmpty()) {
                return "";
            }
            digest.text(sheet.key());
        }
        return digest.hex();
    }

    /** With the names of the columns before them. */
    byte[] all() {
        ByteArrayOutputStream all = new ByteArrayOutputStream(1 << 16);
        all.writeBytes(Columns.FRAMES.stream()
                .map(DownloadsPage.Column::name)
                .collect(Collectors.joining(",", "", "\n"))
                .getBytes(StandardCharsets.UTF_8));
        ledger.content().entries().parallelStream()
                .map(sheet -> of(sheet).getBytes(StandardCharsets.UTF_8))
                .forEachOrdered(all::writeBytes);
        return all.toByteArray();
    }

    private String of(EntrySheet sheet) {
        return kept.recall(sheet.entry().slug(), key(sheet), () -> new Lines(lines(sheet)))
                .text();
    }

    private String key(EntrySheet sheet) {
        return sheet.key().isEmpty()
                ? ""
                : new Digest().text(sheet.key()).text(telling).hex();
    }

    private String lines(EntrySheet sheet) {
        try {
            return Downloads.csv(Columns.FRAMES, false, tables.frames(sheet));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
