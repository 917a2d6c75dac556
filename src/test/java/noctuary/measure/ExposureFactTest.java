package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import noctuary.fact.Fact;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExposureFactTest {
    private static final String SLUG = "m27";

    @TempDir
    private Path root;

    private SmallJournal journal;

    @BeforeEach
    void layOut() {
        journal = new SmallJournal(root);
    }

    private static FrameDraft light(long seed, String time, String seconds, String filter) {
        return FrameDraft.empty(64, 48, seed)
                .card("IMAGETYP", "'Light Frame'")
                .card("DATE-OBS", "'2025-06-14T" + time + "'")
                .card("EXPTIME", seconds)
                .card("FILTER", "'" + filter + "'");
    }

    private static double seconds(Fact<Quantity> fact) {
        return fact.value().orElseThrow().value();
    }

    @Test
    void lightsAddUpByFilterAndCalibrationFramesDoNot() {
        journal.entry(SLUG, "title: A", "frames: ['*.fits']")
                .frame(SLUG, "a.fits", light(1, "22:00:00", "120.0", "L"))
                .frame(SLUG, "b.fits", light(2, "22:03:00", "120.0", "L"))
                .frame(SLUG, "c.fits", light(3, "22:06:00", "300.0", "H"))
                .frame(
                        SLUG,
                        "d.fits",
                        FrameDraft.empty(64, 48, 4).card("IMAGETYP", "'DARK'").card("EXPTIME", "300.0"));
        EntrySheet sheet = journal.sheet(SLUG);
        assertThat(seconds(sheet.figure(Figure.EXPOSURE))).isEqualTo(540);
        assertThat(sheet.exposureByFilter().keySet()).containsExactly("H", "L");
        assertThat(seconds(sheet.exposureByFilter().get("L"))).isEqualTo(240);
        assertThat(sheet.frames().get(3).notCounted()).contains("it is not a light frame");
    }

    /** 0.1 is no binary fraction: ten of them added as doubles give 0.9999999999999999. */
    @Test
    void tenTenthsOfASecondAreOneSecond() {
        journal.entry(SLUG, "title: A", "frames: ['*.fits']");
        for (int i = 0; i < 10; i++) {
            journal.frame(SLUG, i + ".fits", light(10 + i, "22:00:0" + i, "0.1", "L"));
        }
        assertThat(seconds(journal.sheet(SLUG).figure(Figure.EXPOSURE))).isEqualTo(1.0);
    }

    @Test
    void theSamePixelsUnderAnotherNameCountOnce() throws Exception {
        journal.entry(SLUG, "title: A", "frames: ['*.fits']").frame(SLUG, "a.fits", light(1, "22:00:00", "120.0", "L"));
        Path first = root.resolve("entries/m27/a.fits");
        Files.copy(first, first.resolveSibling("b.fits"));
        EntrySheet sheet = journal.sheet(SLUG);
        assertThat(seconds(sheet.figure(Figure.EXPOSURE))).isEqualTo(120);
        assertThat(sheet.frames().get(1).notCounted()).contains("it has the same pixels as a.fits");
    }

    @Test
    void aCalibratedCopyOfAnExposureCountsOnce() {
        journal.entry(SLUG, "title: A", "frames: ['*.fits']")
                .frame(SLUG, "a.fits", light(1, "22:00:00", "120.0", "L"))
                .frame(SLUG, "a-calibrated.fits", light(2, "22:00:00", "120.0", "L"));
        assertThat(seconds(journal.sheet(SLUG).figure(Figure.EXPOSURE))).isEqualTo(120);
    }

    /** Some writers repeat one DATE-OBS in a whole sequence; a differing airmass then shows separate exposures. */
    @Test
    void aRepeatedDateWithAnotherAirmassIsAnotherExposure() {
        journal.entry(SLUG, "title: A", "frames: ['*.fits']")
                .frame(SLUG, "a.fits", light(1, "22:00:00", "120.0", "L").card("AIRMASS", "1.65"))
                .frame(SLUG, "b.fits", light(2, "22:00:00", "120.0", "L").card("AIRMASS", "1.23"));
        assertThat(seconds(journal.sheet(SLUG).figure(Figure.EXPOSURE))).isEqualTo(240);
    }

    /** 24 x 300 s = 7200 s. */
    @Test
    void aStacksHeaderTellsCountTimesExposure() {
        journal.entry(SLUG, "title: A", "stack: s.fits")
                .frame(
                        SLUG,
                        "s.fits",
                        FrameDraft.empty(64, 48, 1).card("NCOMBINE", "24").card("EXPTIME", "300.0"));
        EntrySheet sheet = journal.sheet(SLUG);
        assertThat(seconds(sheet.figure(Figure.EXPOSURE))).isEqualTo(7200);
    }

    @Test
    void typedExposureServesWhenTheFramesAreGone() {
        journal.entry(
                SLUG,
                "title: A",
                "exposure: [{count: 48, seconds: 120, filter: dual-band}, {count: 10, seconds: 30, filter: L}]");
        EntrySheet sheet = journal.sheet(SLUG);
        assertThat(seconds(sheet.figure(Figure.EXPOSURE))).isEqualTo(48 * 120 + 300);
        assertThat(sheet.exposureByFilter().keySet()).containsExactly("dual-band", "L");
        assertThat(sheet.figure(Figure.FWHM_PX)).isEqualTo(Fact.missing("there is no frame or stack to measure"));
    }

    @Test
    void framesAndNoteThatDisagreeAreBothKeptAndSaid() {
        journal.entry(SLUG, "title: A", "frames: ['*.fits']", "exposure: [{count: 2, seconds: 120, filter: L}]")
                .frame(SLUG, "a.fits", light(1, "22:00:00", "120.0", "L"));
        EntrySheet sheet = journal.sheet(SLUG);
        Fact.Known<Quantity> known = (Fact.Known<Quantity>) sheet.figure(Figure.EXPOSURE);
        assertThat(known.reading().value().value()).isEqualTo(120);
        assertThat(known.disagreeing())
                .singleElement()
                .satisfies(r -> assertThat(r.value().value()).isEqualTo(240));
        assertThat(sheet.problems())
                .extracting(Problem::what)
                .contains("the note says 240 s, the sum of the frames says 120 s");
    }
}
