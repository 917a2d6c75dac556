package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import noctuary.fact.Fact;
import noctuary.fact.Origin;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NightFactTest {
    private static final String SLUG = "whirlpool";

    @TempDir
    private Path root;

    private SmallJournal journal;

    @BeforeEach
    void layOut() {
        journal = new SmallJournal(root);
    }

    private static FrameDraft taken(String utc, long seed) {
        return FrameDraft.empty(32, 24, seed).card("DATE-OBS", "'" + utc + "'").card("EXPTIME", "60.0");
    }

    /** Rome is two hours ahead of UTC in June: 09:59 UTC is 11:59 there, still the night before; 10:01 is past noon. */
    @Test
    void nightsRunFromLocalNoonToLocalNoon() {
        journal.entry(SLUG, "title: A", "frames: ['*.fits']")
                .frame(SLUG, "a.fits", taken("2025-06-14T09:59:00", 1))
                .frame(SLUG, "b.fits", taken("2025-06-14T10:01:00", 2))
                .frame(SLUG, "c.fits", taken("2025-06-15T02:00:00", 3));
        EntrySheet sheet = journal.sheet(SLUG);
        assertThat(sheet.nights()).containsExactly(LocalDate.of(2025, 6, 13), LocalDate.of(2025, 6, 14));
        assertThat(sheet.night().value()).contains(LocalDate.of(2025, 6, 13));
    }

    @Test
    void withoutAZoneTheSitesLongitudeSplitsTheNights() {
        journal.file("sites/terrace.md", "---", "name: Terrace", "longitude: 150 deg", "---");
        journal.entry(SLUG, "title: A", "frames: ['*.fits']").frame(SLUG, "a.fits", taken("2025-06-14T03:00:00", 1));
        EntrySheet sheet = journal.sheet(SLUG);
        assertThat(sheet.night().value()).contains(LocalDate.of(2025, 6, 14));
        Fact.Known<LocalDate> known = (Fact.Known<LocalDate>) sheet.night();
        assertThat(((Origin.Derived) known.reading().origin()).formula()).contains("mean solar time");
    }

    @Test
    void aTypedNightServesWhenTheFramesAreGone() {
        journal.entry(SLUG, "title: A", "night: 2025-06-14", "exposure: [{count: 1, seconds: 60, filter: L}]");
        assertThat(journal.sheet(SLUG).night().value()).contains(LocalDate.of(2025, 6, 14));
    }

    @Test
    void aDateInTheNotesNameIsTheLastResort() {
        journal.entry("2025-06-14-m51", "title: A", "exposure: [{count: 1, seconds: 60, filter: L}]");
        assertThat(journal.sheet("2025-06-14-m51").night().value()).contains(LocalDate.of(2025, 6, 14));
    }

    @Test
    void nothingTellsNothing() {
        journal.entry(SLUG, "title: A", "exposure: [{count: 1, seconds: 60, filter: L}]");
        assertThat(journal.sheet(SLUG).night())
                .isEqualTo(Fact.missing("no frame has a date, and the note has no night"));
    }
}
