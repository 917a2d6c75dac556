package noctuary.measure;

import static noctuary.measure.Readings.cited;
import static noctuary.measure.Readings.derived;
import static noctuary.measure.Readings.input;

import java.util.Optional;
import noctuary.fact.Fact.Reading;
import noctuary.fact.Origin.Header;
import noctuary.fact.Origin.Input;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.fits.FrameHeader;

/**
 * The pitch of the pixels as stored. Most writers give the pitch of the binned pixel, some that of the sensor's: with
 * binning, the two readings are told apart by the scale of the sky, else by the rig's camera, else the first is taken
 * and the doubt is said.
 */
final class PixelPitch {
    static final String METHOD = "pixel-pitch";

    /** How far the pitch may be from what sky or rig expect and still be that reading. */
    private static final double NEAR = 0.1;

    private PixelPitch() {}

    /** @param by who expects it, for a sentence */
    record Expected(double um, String by) {}

    record Answer(Reading<Quantity> reading, boolean doubtful) {}

    static Optional<Answer> of(FrameSheet frame, Optional<Expected> expected) {
        Optional<FrameHeader> header =
                frame.header().filter(h -> h.pixelPitchUm().isPresent());
        return header.map(h -> {
            Reading<Quantity> card = cited(frame, h.pixelPitchUm().get(), Unit.MICROMETRE);
            return h.binning() == 1 ? new Answer(card, false) : decide(frame, h.binning(), card, expected);
        });
    }

    private static Answer decide(FrameSheet frame, int binning, Reading<Quantity> card, Optional<Expected> expected) {
        double asWritten = card.value().value();
        double multiplied = asWritten * binning;
        Input pitch = input("pitch", card);
        Input bins = new Input(
                "binning", Integer.toString(binning), new Header(frame.name(), "XBINNING", Integer.toString(binning)));
        if (expected.filter(e -> near(multiplied, e.um())).isPresent()) {
            String formula = "pitch × binning: the card gives the single pixel, as "
                    + expected.get().by() + " shows";
            return new Answer(derived(multiplied, Unit.MICROMETRE, formula, METHOD, pitch, bins), false);
        }
        boolean confirmed = expected.filter(e -> near(asWritten, e.um())).isPresent();
        String formula = confirmed
                ? "the card gives the binned pixel, as " + expected.get().by() + " shows"
                : "taken as the binned pixel; neither sky nor rig could tell";
        return new Answer(derived(asWritten, Unit.MICROMETRE, formula, METHOD, pitch, bins), !confirmed);
    }

    private static boolean near(double pitch, double expected) {
        return Math.abs(pitch - expected) <= NEAR * expected;
    }
}
