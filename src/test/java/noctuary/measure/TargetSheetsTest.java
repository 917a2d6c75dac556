package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import noctuary.entry.Journal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TargetSheetsTest {
    @TempDir
    private Path folder;

    @Test
    void noTwoTargetsShareAnAddress() {
        SmallJournal small = new SmallJournal(folder);
        String exposure = "exposure: [{count: 1, seconds: 60}]";
        small.entry("a", "title: A", "target: 'Field 7'", exposure)
                .entry("b", "title: B", "target: 'Field-7'", exposure)
                .entry("c", "title: C", "target: 'Câmp'", exposure)
                .entry("d", "title: D", "target: '星'", exposure);
        Journal journal = Journal.read(folder);
        EntrySheets sheets = new EntrySheets(journal, Meter::measure);
        List<TargetSheet> targets =
                TargetSheets.of(journal.entries().stream().map(sheets::of).toList());
        assertThat(targets).extracting(TargetSheet::id).containsExactly("camp", "field-7", "field-7-2", "target");
    }
}
