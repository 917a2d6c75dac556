package noctuary.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import noctuary.entry.Journal;
import noctuary.entry.RigNote;
import noctuary.fact.Quantity;
import noctuary.fits.FrameHeader;

/**
 * The rig that a frame was made with, as far as the header's pixel size and the dates tell.
 *
 * @param certain whether no other rig would fit
 */
record RigGuess(Optional<String> id, boolean certain, String why) {
    private static final double NEAR = 0.05;

    static RigGuess of(Journal journal, SeenFrame frame) {
        List<RigNote> fitting = journal.rigs().values().stream()
                .filter(rig -> inUse(rig, frame.night()))
                .filter(rig -> samePixel(rig, frame.header()))
                .toList();
        if (fitting.size() == 1) {
            return new RigGuess(
                    Optional.of(fitting.get(0).id()), true, "the only rig of that pixel size in use that night");
        }
        Optional<String> usual = journal.settings().rig();
        String why = fitting.isEmpty() ? whyNone(frame.header()) : "several rigs would fit";
        return new RigGuess(usual, false, why + (usual.isPresent() ? "; this is the journal's usual one" : ""));
    }

    /** The rig, where no other would fit. */
    Optional<String> onlyOne() {
        return certain ? id : Optional.empty();
    }

    private static String whyNone(FrameHeader header) {
        return header.pixelPitchUm().isEmpty()
                ? "the headers tell no pixel size to choose by"
                : "no rig in use that night has the pixel size of the headers";
    }

    private static boolean inUse(RigNote rig, Optional<LocalDate> night) {
        return night.isEmpty()
                || (rig.from().isEmpty() || !night.get().isBefore(rig.from().get()))
                        && (rig.to().isEmpty() || !night.get().isAfter(rig.to().get()));
    }

    private static boolean samePixel(RigNote rig, FrameHeader header) {
        if (header.pixelPitchUm().isEmpty() || !rig.camera().containsKey("pixel")) {
            return false;
        }
        double written = header.pixelPitchUm().get().value();
        Quantity pixel = rig.camera().get("pixel").value();
        return near(written, pixel.value()) || near(written, pixel.value() * header.binning());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= NEAR * b;
    }
}
