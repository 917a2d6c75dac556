package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import noctuary.measure.FrameReport.Spread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StarSpreadTest {
    private static final String SLUG = "2025-06-14-m27";

    @TempDir
    private Path folder;

    @Test
    void nothingSpreadsWithoutStars() {
        EntrySheet sheet = new SmallJournal(folder)
                .entry(SLUG, "title: A", "exposure: [{count: 1, seconds: 60}]")
                .sheet(SLUG);
        assertThat(sheet.fwhmSpreadArcsec().median()).isEmpty();
    }

    /** The frames are counted, so the stack's narrower stars must not set the ends of the line. */
    @Test
    void theSpreadBelongsToTheFilesOfTheWidth() {
        SmallJournal journal = new SmallJournal(folder)
                .entry(SLUG, "title: A", "frames: ['l*.fits']", "stack: stack.fits")
                .frame(SLUG, "l1.fits", FrameDraft.stars(4.0, 1))
                .frame(SLUG, "l2.fits", FrameDraft.stars(4.4, 2))
                .frame(SLUG, "l3.fits", FrameDraft.stars(4.2, 3))
                .frame(SLUG, "stack.fits", FrameDraft.stars(2.5, 4));
        EntrySheet sheet = journal.sheet(SLUG);
        double width = sheet.figure(Figure.FWHM_ARCSEC).value().orElseThrow().value();
        Spread spread = sheet.fwhmSpreadArcsec();
        assertThat(spread.median().orElseThrow()).isCloseTo(width, within(1e-9));
        assertThat(spread.low().orElseThrow()).isBetween(0.9 * width, width);
        assertThat(spread.high().orElseThrow()).isBetween(width, 1.1 * width);
    }
}
