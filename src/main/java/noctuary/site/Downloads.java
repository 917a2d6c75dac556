package noctuary.site;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import noctuary.measure.EntrySheet;
import noctuary.site.page.DownloadsPage;
import noctuary.site.page.DownloadsPage.Column;
import noctuary.site.page.Link;

/** What can be taken away, and the page that says so. Lines end in LF; the same journal gives the same bytes. */
final class Downloads {
    private static final String JOURNAL = "data/journal.json";
    private static final String ENTRIES = "data/entries.csv";
    private static final String FRAMES = "data/frames.csv";

    private final Ledger ledger;
    private final FrameLines frames;

    /** Makes the bytes of a file. */
    interface Content {
        byte[] bytes() throws IOException;
    }

    /**
     * A file that can be taken away.
     *
     * @param path from the top folder
     * @param shown stands for all that it holds; empty when only its bytes tell
     */
    record Download(String path, String shown, Content content) {}

    Downloads(Ledger ledger) {
        this.ledger = ledger;
        this.frames = new FrameLines(ledger);
    }

    List<Download> files() {
        return List.of(
                new Download(JOURNAL, "", () -> json(new JournalRecords(ledger).journal())),
                new Download(
                        ENTRIES,
                        "",
                        () -> csv(Columns.ENTRIES, true, new Tables(ledger).entries())
                                .getBytes(StandardCharsets.UTF_8)),
                new Download(FRAMES, frames.shown(), frames::all));
    }

    /** @param sizes of the files by path, in bytes */
    DownloadsPage page(Heads heads, Map<String, Long> sizes) {
        List<EntrySheet> entries = ledger.content().entries();
        int frameCount = entries.stream()
                .mapToInt(sheet -> sheet.entry().frames().size())
                .sum();
        var publish = ledger.content().journal().settings().publish();
        return new DownloadsPage(
                heads.of(Address.DOWNLOADS, "Data", "Everything the pages show, as JSON and as spreadsheets."),
                List.of(
                        file("journal.json", sizes.get(JOURNAL), "the whole journal", List.of()),
                        file(
                                "entries.csv",
                                sizes.get(ENTRIES),
                                Numerals.count(entries.size(), "row", "rows"),
                                Columns.ENTRIES),
                        file(
                                "frames.csv",
                                sizes.get(FRAMES),
                                Numerals.count(frameCount, "row", "rows"),
                                Columns.FRAMES)),
                publish.coordinates(),
                publish.fileNames());
    }

    private static DownloadsPage.File file(String name, long bytes, String rows, List<Column> columns) {
        String size = bytes < 10_000 ? bytes + "\u00a0bytes" : Numerals.fixed(bytes / 1000.0, 0) + "\u00a0kB";
        return new DownloadsPage.File(Link.of(name, name), size, rows, columns);
    }

    private static byte[] json(JournalRecord journal) throws IOException {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter()
                .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                .withArrayIndenter(new DefaultIndenter("  ", "\n"));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
        JsonMapper.builder().addModule(new Jdk8Module()).build().writer(printer).writeValue(bytes, journal);
        bytes.write('\n');
        return bytes.toByteArray();
    }

    static String csv(List<Column> columns, boolean header, Stream<Map<String, Object>> rows) throws IOException {
        CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(header).setLineSeparator("\n");
        columns.forEach(column -> schema.addColumn(column.name()));
        StringWriter text = new StringWriter();
        try (SequenceWriter writer = new CsvMapper().writer(schema.build()).writeValues(text)) {
            for (Map<String, Object> row : (Iterable<Map<String, Object>>) rows::iterator) {
                writer.write(columns.stream()
                        .map(column -> Tables.cell(row.get(column.name())))
                        .toList());
            }
        }
        return text.toString();
    }
}
