package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import noctuary.fact.Fact;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpticsFactTest {
    private static final String SLUG = "2025-06-14-m27";

    @TempDir
    private Path root;

    private SmallJournal journal;

    @BeforeEach
    void layOut() {
        journal = new SmallJournal(root).entry(SLUG, "title: A", "frames: ['*.fits']");
    }

    private EntrySheet with(FrameDraft frame) {
        return journal.frame(SLUG, "a.fits", frame).sheet(SLUG);
    }

    private static double value(EntrySheet sheet, Figure figure) {
        return sheet.figure(figure).value().orElseThrow().value();
    }

    private static FrameDraft sized() {
        return FrameDraft.empty(200, 150, 1).card("EXPTIME", "60.0");
    }

    private static FrameDraft binnedTwice(String pixelUm) {
        return sized().card("XBINNING", "2")
                .card("YBINNING", "2")
                .card("FOCALLEN", "560.0")
                .card("XPIXSZ", pixelUm)
                .card("YPIXSZ", pixelUm);
    }

    private void unbinnedPixelIs376() {
        journal.file(
                "rigs/heron.md",
                "---",
                "name: Heron",
                "optics: {focal length: 560 mm}",
                "camera: {pixel: 3.76 µm}",
                "---");
    }

    /** 206.265 p / f: 3.76 µm at 560 mm give 1.384921 arcsec/px (small-angle geometry, worked out). */
    @Test
    void scaleComesFromTheHeadersOpticsWhereThereIsNoSky() {
        EntrySheet sheet = with(sized().card("XPIXSZ", "3.76").card("FOCALLEN", "560.0"));
        assertThat(value(sheet, Figure.IMAGE_SCALE)).isCloseTo(1.384921, within(1e-6));
    }

    @Test
    void theRigTellsTheScaleWhenTheHeaderIsSilent() {
        EntrySheet sheet = with(sized());
        assertThat(value(sheet, Figure.IMAGE_SCALE)).isCloseTo(206.26480625 * 3.3 / 712.5, within(1e-6));
        assertThat(value(sheet, Figure.FOCAL_RATIO)).isCloseTo(4.75, within(1e-12));
    }

    @Test
    void theSkyIsBelievedAndTheDisagreeingHeaderIsSaid() {
        double degPerPx = 206.264806 * 3.3 / 573 / 3600;
        EntrySheet sheet = with(sized().card("XPIXSZ", "3.3")
                .card("FOCALLEN", "560.0")
                .card("CTYPE1", "'RA---TAN'")
                .card("CTYPE2", "'DEC--TAN'")
                .card("CRPIX1", "100.5")
                .card("CRPIX2", "75.5")
                .card("CRVAL1", "299.9")
                .card("CRVAL2", "22.7")
                .card("CD1_1", "-" + degPerPx)
                .card("CD1_2", "0.0")
                .card("CD2_1", "0.0")
                .card("CD2_2", "" + degPerPx));
        assertThat(value(sheet, Figure.FOCAL_LENGTH)).isCloseTo(573, within(0.01));
        Fact.Known<Quantity> focal = (Fact.Known<Quantity>) sheet.figure(Figure.FOCAL_LENGTH);
        assertThat(focal.disagreeing()).extracting(r -> r.value().value()).contains(560.0);
        assertThat(sheet.problems()).extracting(Problem::what).contains("the header says 560 mm, the sky says 573 mm");
    }

    /** With binning 2, XPIXSZ 7.52 is the binned pixel of a 3.76 µm camera: 2.7698 arcsec/px at 560 mm, not 5.5397. */
    @Test
    void theRigsCameraTellsWhetherThePixelIsAlreadyBinned() {
        unbinnedPixelIs376();
        EntrySheet sheet = with(binnedTwice("7.52"));
        assertThat(value(sheet, Figure.IMAGE_SCALE)).isCloseTo(2.7698, within(1e-4));
        assertThat(sheet.problems()).extracting(Problem::place).doesNotContain("pixel pitch");
    }

    @Test
    void theRigsCameraTellsThatThePixelIsNotYetBinned() {
        unbinnedPixelIs376();
        EntrySheet sheet = with(binnedTwice("3.76"));
        assertThat(value(sheet, Figure.IMAGE_SCALE)).isCloseTo(2.7698, within(1e-4));
        assertThat(sheet.problems()).extracting(Problem::place).doesNotContain("pixel pitch");
    }

    @Test
    void anUndecidableBinningIsSaid() {
        journal.file("rigs/heron.md", "---", "name: Heron", "---");
        EntrySheet sheet = with(binnedTwice("3.76"));
        assertThat(sheet.problems()).extracting(Problem::place).contains("pixel pitch");
    }

    /** 2 atan(N p / 2 f): worked out for 200 px of 1.384921 arcsec. */
    @Test
    void theFieldIsThatOfATangentProjection() {
        EntrySheet sheet = with(sized().card("XPIXSZ", "3.76").card("FOCALLEN", "560.0"));
        double expected = Math.toDegrees(2 * Math.atan(200 * 0.00376 / 2 / 560));
        assertThat(value(sheet, Figure.FIELD_WIDTH)).isCloseTo(expected, within(1e-9));
    }

    @Test
    void nothingIsGuessedWithoutRigAndHeader() {
        journal.file("rigs/heron.md", "---", "name: Heron", "---");
        EntrySheet sheet = with(sized());
        assertThat(sheet.figure(Figure.IMAGE_SCALE))
                .isEqualTo(Fact.missing("neither header nor rig tells pixel size and focal length"));
        assertThat(sheet.figure(Figure.FIELD_WIDTH)).isEqualTo(Fact.missing("the image scale is not known"));
    }
}
