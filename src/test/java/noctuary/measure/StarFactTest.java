package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import noctuary.fact.Fact;
import noctuary.fact.Origin;
import noctuary.fact.Quantity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StarFactTest {
    private static final String SLUG = "m27";

    @TempDir
    private Path root;

    private SmallJournal journal;

    @BeforeEach
    void layOut() {
        journal = new SmallJournal(root);
    }

    private static FrameDraft light(double fwhmPx, long seed) {
        return FrameDraft.stars(fwhmPx, seed)
                .card("EXPTIME", "60.0")
                .card("XPIXSZ", "3.3")
                .card("FOCALLEN", "712.5")
                .card("DATE-OBS", "'2025-06-14T22:0" + seed + ":00'");
    }

    private static Fact.Known<Quantity> known(EntrySheet sheet, Figure figure) {
        return (Fact.Known<Quantity>) sheet.figure(figure);
    }

    @Test
    void theWidthIsTheMedianOverTheFramesWithEachAsInput() {
        journal.entry(SLUG, "title: A", "frames: ['*.fits']")
                .frame(SLUG, "a.fits", light(2.5, 1))
                .frame(SLUG, "b.fits", light(3, 2))
                .frame(SLUG, "c.fits", light(5, 3));
        EntrySheet sheet = journal.sheet(SLUG);
        Fact.Known<Quantity> px = known(sheet, Figure.FWHM_PX);
        assertThat(px.reading().value().value()).isCloseTo(3, within(0.09));
        assertThat(((Origin.Derived) px.reading().origin()).inputs())
                .extracting(Origin.Input::name)
                .isEqualTo(List.of("a.fits", "b.fits", "c.fits"));
        double scale = 206.26480625 * 3.3 / 712.5;
        assertThat(known(sheet, Figure.FWHM_ARCSEC).reading().value().value())
                .isCloseTo(px.reading().value().value() * scale, within(1e-9));
    }

    /** Resampling changes the pixel: a stack of another size does not lend its scale to the frames. */
    @Test
    void aStackOfAnotherSizeDoesNotTellTheScaleOfTheFrames() {
        String degrees = Double.toString(0.5 / 3600);
        journal.entry(SLUG, "title: A", "frames: ['l*.fits']", "stack: s.fits")
                .frame(SLUG, "l1.fits", FrameDraft.stars(3, 1).card("EXPTIME", "60.0"))
                .frame(
                        SLUG,
                        "s.fits",
                        FrameDraft.empty(400, 300, 2)
                                .card("CTYPE1", "'RA---TAN'")
                                .card("CTYPE2", "'DEC--TAN'")
                                .card("CRPIX1", "200.5")
                                .card("CRPIX2", "150.5")
                                .card("CRVAL1", "299.9")
                                .card("CRVAL2", "22.7")
                                .card("CD1_1", "-" + degrees)
                                .card("CD2_2", degrees));
        EntrySheet sheet = journal.sheet(SLUG);
        double rigScale = 206.26480625 * 3.3 / 712.5;
        assertThat(known(sheet, Figure.IMAGE_SCALE).reading().value().value()).isCloseTo(rigScale, within(1e-6));
    }

    @Test
    void framesWithoutStarsHaveNoWidthAndSayWhy() {
        journal.entry(SLUG, "title: A", "frames: ['*.fits']")
                .frame(SLUG, "a.fits", FrameDraft.empty(200, 150, 1).card("EXPTIME", "60.0"));
        Fact<Quantity> width = journal.sheet(SLUG).figure(Figure.FWHM_ARCSEC);
        assertThat(width).isInstanceOf(Fact.Missing.class);
        assertThat(((Fact.Missing<Quantity>) width).why()).isNotBlank();
    }
}
