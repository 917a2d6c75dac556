package noctuary.site;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import noctuary.site.page.DownloadsPage;
import noctuary.site.page.DownloadsPage.Column;
import noctuary.site.page.Link;

/** What can be taken away, and the page that says so. Lines end in LF; the same journal gives the same bytes. */
final class Downloads {
    private final Ledger ledger;
    private final String journal;
    private final String entries;
    private final String frames;
    private final int frameCount;

    Downloads(Ledger ledger) throws IOException {
        this.ledger = ledger;
        Tables tables = new Tables(ledger);
        this.frameCount = ledger.content().entries().stream()
                .mapToInt(sheet -> sheet.entry().frames().size())
                .sum();
        this.journal = json(new JournalRecords(ledger).journal());
        this.entries = csv(Columns.ENTRIES, true, tables.entries());
        this.frames = Columns.FRAMES.stream().map(Column::name).collect(Collectors.joining(",", "", "\n"))
                + new FrameLines(ledger).all();
    }

    /** Text by path from the top folder. */
    Map<String, String> files() {
        return Map.of("data/journal.json", journal, "data/entries.csv", entries, "data/frames.csv", frames);
    }

    DownloadsPage page(Heads heads) {
        int entryCount = ledger.content().entries().size();
        var publish = ledger.content().journal().settings().publish();
        return new DownloadsPage(
                heads.of(Address.DOWNLOADS, "Data", "Everything the pages show, as JSON and as spreadsheets."),
                List.of(
                        file("journal.json", journal, "the whole journal", List.of()),
                        file("entries.csv", entries, Numerals.count(entryCount, "row", "rows"), Columns.ENTRIES),
                        file("frames.csv", frames, Numerals.count(frameCount, "row", "rows"), Columns.FRAMES)),
                publish.coordinates(),
                publish.fileNames());
    }

    private static DownloadsPage.File file(String name, String text, String rows, List<Column> columns) {
        int bytes = text.getBytes(StandardCharsets.UTF_8).length;
        String size = bytes < 10_000 ? bytes + "\u00a0bytes" : Numerals.fixed(bytes / 1000.0, 0) + "\u00a0kB";
        return new DownloadsPage.File(Link.of(name, name), size, rows, columns);
    }

    private static String json(JournalRecord journal) throws JsonProcessingException {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter()
                .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                .withArrayIndenter(new DefaultIndenter("  ", "\n"));
        return JsonMapper.builder()
                        .addModule(new Jdk8Module())
                        .build()
                        .writer(printer)
                        .writeValueAsString(journal)
                + "\n";
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
