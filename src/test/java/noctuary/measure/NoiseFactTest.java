package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import noctuary.fact.Fact;
import noctuary.fact.Quantity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NoiseFactTest {
    private static final String SLUG = "m27";

    @TempDir
    private Path root;

    private SmallJournal journal;

    @BeforeEach
    void layOut() {
        journal = new SmallJournal(root);
    }

    private double value(Figure figure) {
        return ((Fact.Known<Quantity>) journal.sheet(SLUG).figure(figure))
                .reading()
                .value()
                .value();
    }

    /** White noise: neighbours tell the same noise as the pixels, and an area's is that of its pixels. */
    @Test
    void independentPixelsReadAlikeAtAllScales() {
        journal.entry(SLUG, "title: A", "frames: [a.fits]")
                .frame(SLUG, "a.fits", FrameDraft.empty(400, 300, 2).card("EXPTIME", "60.0"));
        assertThat(value(Figure.NOISE_OF_NEIGHBOURS) / value(Figure.BACKGROUND_NOISE))
                .isCloseTo(1, within(0.04));
        assertThat(value(Figure.NOISE_CORRELATION)).isCloseTo(1, within(0.08));
        assertThat(value(Figure.BACKGROUND_GRADIENT)).isLessThan(1);
    }

    @Test
    void theNoiseOfASingleFrameOfKnownGainIsInElectronsToo() {
        journal.entry(SLUG, "title: A", "frames: [a.fits]")
                .frame(
                        SLUG,
                        "a.fits",
                        FrameDraft.empty(400, 300, 2).card("EXPTIME", "60.0").card("EGAIN", "0.25"));
        assertThat(value(Figure.BACKGROUND_NOISE_ELECTRONS))
                .isCloseTo(0.25 * value(Figure.BACKGROUND_NOISE), within(1e-9));
    }

    @Test
    void aStackHasNoElectronsAndSaysWhy() {
        journal.entry(SLUG, "title: A", "stack: s.fits")
                .frame(
                        SLUG,
                        "s.fits",
                        FrameDraft.empty(400, 300, 2)
                                .card("EXPTIME", "3600.0")
                                .card("NCOMBINE", "60")
                                .card("EGAIN", "0.25"));
        assertThat(journal.sheet(SLUG).figure(Figure.BACKGROUND_NOISE_ELECTRONS))
                .isEqualTo(Fact.missing("the counts of a stack have no unit that is known"));
    }
}
