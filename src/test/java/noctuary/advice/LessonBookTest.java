package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import noctuary.entry.Journal;
import noctuary.measure.EntrySheet;
import noctuary.measure.EntrySheets;
import noctuary.measure.Meter;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LessonBookTest {
    @TempDir
    Path folder;

    private List<LessonState> lessons;

    @BeforeEach
    void threeEntries() {
        SmallJournal journal = new SmallJournal(folder);
        String exposure = "exposure: [{count: 10, seconds: 60}]";
        journal.entry(
                "first",
                "rig: heron",
                "night: 2025-03-01",
                exposure,
                "lessons: [{about: cabling, do: label the plugs}, {about: dew, do: heater on early}]");
        journal.entry("second", "rig: heron", "night: 2025-04-01", exposure, "lost: [{minutes: 30, cause: Cabling}]");
        journal.entry("third", "rig: heron", "night: 2025-05-01", exposure, "closes: [first#cabling, first#dew]");
        journal.entry("fourth", "rig: heron", "night: 2025-06-01", exposure, "lost: [{minutes: 10, cause: dew}]");
        Journal read = Journal.read(folder);
        EntrySheets sheets = new EntrySheets(read, Meter::measure);
        List<EntrySheet> entries = read.entries().stream().map(sheets::of).toList();
        lessons = LessonBook.of(entries, Map.of());
    }

    @Test
    void aLessonIsOpenUntilAnotherEntryClosesIt() {
        assertThat(lessons).extracting(LessonState::id).containsExactly("first#cabling", "first#dew");
        assertThat(lessons).allMatch(l -> l.closedBy().filter("third"::equals).isPresent());
        assertThat(lessons).extracting(LessonState::openedBy).containsOnly("first");
    }

    @Test
    void aCauseThatReturnsIsSeenAgainHoweverItIsSpelled() {
        assertThat(lessons.get(0).seenAgain()).containsExactly("second");
        assertThat(lessons.get(0).returned()).isFalse();
    }

    @Test
    void aCauseThatReturnsAfterItWasClosedIsBack() {
        assertThat(lessons.get(1).seenAgain()).containsExactly("fourth");
        assertThat(lessons.get(1).returned()).isTrue();
    }
}
