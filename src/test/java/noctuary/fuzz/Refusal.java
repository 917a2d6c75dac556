package noctuary.fuzz;

import java.util.List;
import noctuary.measure.FrameReport;

/** A refusal in words, not one that a last resort made of a bug or of a full heap. */
final class Refusal {
    private static final List<String> LAST_RESORTS =
            List.of("nobody foresaw", "measuring it failed", "fit into memory", "memory Java has left", "Exception");

    private Refusal() {}

    static void require(String message) {
        LAST_RESORTS.stream().filter(message::contains).findFirst().ifPresent(last -> {
            throw new IllegalStateException("no refusal of the room's own: " + message);
        });
    }

    static void require(List<FrameReport.Trouble> troubles) {
        troubles.forEach(trouble -> require(trouble.what()));
    }
}
