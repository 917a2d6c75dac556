package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import noctuary.entry.Journal;
import noctuary.measure.EntrySheet;
import noctuary.measure.EntrySheets;
import noctuary.measure.FrameDraft;
import noctuary.measure.Meter;
import noctuary.measure.RigSheet;
import noctuary.measure.RigSheets;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RigDeskTest {
    @TempDir
    Path folder;

    /** f = 206.264806 p / s, as for the image scale: 3.3 µm and 720 mm, once 2.6 % longer. */
    @Test
    void theSkyTellsTheTrueFocalLengthAndTheNightThatDiffers() {
        SmallJournal journal = new SmallJournal(folder);
        for (int n = 1; n <= 5; n++) {
            matchedToTheSky(journal, "night" + n, n, n == 3 ? 720 * 1.026 : 720);
        }
        RigDesk desk = desks().get("heron");
        RigDesk.Focal focal = desk.focal().orElseThrow();
        assertThat(focal.nights()).isEqualTo(5);
        assertThat(focal.measuredMm()).isCloseTo(720, within(0.01));
        assertThat(focal.nominalMm().getAsDouble()).isCloseTo(712.5, within(1e-9));
        assertThat(focal.factor().getAsDouble()).isCloseTo(0.96, within(1e-4));
        assertThat(desk.findings())
                .extracting(Finding::text)
                .containsExactly(
                        "The sky says 720.0 mm of focal length, the note 712.5 mm.",
                        "On 2025-05-03 the focal length was 2.6 % longer than on the other nights: something in the train "
                                + "sat elsewhere.");
    }

    /** Wren's 3.76 µm behind Heron's 712.5 mm: 206.264806 x 3.76 / 712.5 = 1.088499 arcsec a pixel, by hand. */
    @Test
    void aCameraBehindOtherOpticsIsWorkedOutFromBothNotes() {
        SmallJournal journal = new SmallJournal(folder);
        journal.file(
                "rigs/wren.md",
                "---",
                "name: Wren",
                "optics: {aperture: 80 mm, focal length: 480 mm, back focus: 55 mm}",
                "camera: {pixel: 3.76 µm, width: 400, height: 300}",
                "train: [{part: reducer}, {part: spacer, length: 40 mm}, {part: camera, length: 17.5 mm}]",
                "payload: [{part: tube, mass: 2.5 kg}, {part: camera, mass: 0.5 kg}]",
                "cost: [{part: tube, price: 400 EUR}, {part: camera, price: 300 EUR}]",
                "---");
        List<WhatIf> tables = desks().get("wren").swaps();
        assertThat(tables).extracting(WhatIf::part).contains("telescope", "camera");
        List<Swap> wren = columns(tables, "camera");
        assertThat(wren).extracting(Swap::kind).containsExactly(Swap.Kind.OWN, Swap.Kind.PART, Swap.Kind.WHOLE);
        Swap own = wren.get(0);
        assertThat(own.shimMm().getAsDouble()).isCloseTo(-2.5, within(1e-9));
        assertThat(own.cost().get("EUR")).isEqualByComparingTo("700");
        Swap behindHeron = columns(desks().get("heron").swaps(), "camera").get(1);
        assertThat(behindHeron.rig()).isEqualTo("wren");
        assertThat(behindHeron.figures().imageScaleArcsecPerPx().getAsDouble()).isCloseTo(1.088499, within(1e-6));
        assertThat(behindHeron.measured()).isEmpty();
        assertThat(behindHeron.cost()).as("heron's camera has no price").isEmpty();
    }

    /** The light of a pixel goes with (aperture / focal length)²: (80 / 480)² against (150 / 750)². */
    @Test
    void everyPartIsExchangedByItselfAndAnEarlierOneKeepsItsNights() {
        SmallJournal journal = new SmallJournal(folder);
        journal.file(
                "rigs/heron.md",
                "---",
                "name: Heron",
                "optics: {aperture: 150 mm, focal length: 750 mm, reducer: 0.95, back focus: 55 mm}",
                "camera: {pixel: 3.3 µm, width: 5120, height: 3840}",
                "train: [{part: corrector}, {part: spacer, length: 36 mm}, {part: spacer, since: 2025-05-03, length: 37 mm},"
                        + " {part: camera, length: 17.5 mm}]",
                "---");
        journal.file(
                "rigs/wren.md",
                "---",
                "name: Wren",
                "optics: {aperture: 80 mm, focal length: 480 mm, reducer: 0.8, back focus: 57 mm}",
                "---");
        for (int n = 1; n <= 4; n++) {
            matchedToTheSky(journal, "night" + n, n, 712.5);
        }
        List<WhatIf> tables = desks().get("heron").swaps();
        assertThat(tables).extracting(WhatIf::part).containsExactly("telescope", "corrector or reducer", "spacer");
        Swap earlier = columns(tables, "spacer").get(1);
        assertThat(earlier.kind()).isEqualTo(Swap.Kind.EARLIER);
        assertThat(earlier.shimMm().getAsDouble()).isCloseTo(1.5, within(1e-9));
        assertThat(earlier.measured().orElseThrow().nights()).isEqualTo(2);
        assertThat(columns(tables, "spacer").get(0).measured().orElseThrow().nights())
                .isEqualTo(2);
        Swap telescope = columns(tables, "telescope").get(1);
        assertThat(telescope.figures().effectiveFocalLengthMm().getAsDouble()).isCloseTo(480 * 0.95, within(1e-9));
        assertThat(telescope.light().getAsDouble()).isCloseTo(Math.pow(80.0 / 150 * 750 / 480, 2), within(1e-9));
        Swap reducer = columns(tables, "corrector or reducer").get(1);
        assertThat(reducer.figures().effectiveFocalLengthMm().getAsDouble()).isCloseTo(600, within(1e-9));
        assertThat(reducer.shimMm().getAsDouble()).isCloseTo(57 - 54.5, within(1e-9));
    }

    private static List<Swap> columns(List<WhatIf> tables, String part) {
        return tables.stream()
                .filter(t -> t.part().equals(part))
                .findFirst()
                .orElseThrow()
                .columns();
    }

    private static void matchedToTheSky(SmallJournal journal, String slug, int day, double focalMm) {
        double degrees = 206.264806 * 3.3 / focalMm / 3600;
        journal.entry(slug, "rig: heron", "frames: [\"*.fits\"]");
        journal.frame(
                slug,
                "l.fits",
                FrameDraft.empty(200, 150, day)
                        .card("DATE-OBS", "'2025-05-0" + day + "T22:00:00'")
                        .card("CTYPE1", "'RA---TAN'")
                        .card("CTYPE2", "'DEC--TAN'")
                        .card("CRVAL1", "150.0")
                        .card("CRVAL2", "20.0")
                        .card("CRPIX1", "100.5")
                        .card("CRPIX2", "75.5")
                        .card("CD1_1", String.format(Locale.ROOT, "%.12f", -degrees))
                        .card("CD1_2", "0.0")
                        .card("CD2_1", "0.0")
                        .card("CD2_2", String.format(Locale.ROOT, "%.12f", degrees)));
    }

    private Map<String, RigDesk> desks() {
        Journal journal = Journal.read(folder);
        EntrySheets sheets = new EntrySheets(journal, Meter::measure);
        List<EntrySheet> entries = journal.entries().stream().map(sheets::of).toList();
        Map<String, RigSheet> rigs = RigSheets.of(journal, entries);
        return Advice.of(journal, entries, rigs, Map.of()).desks();
    }
}
