package noctuary.advice;

import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.say;

import java.util.List;
import java.util.Optional;
import noctuary.stats.Robust;

/** Whether a tube that is left standing stops cooling, from the nights of a rig. */
final class Cooling {
    private static final int FEWEST_NIGHTS = 2;
    /** Slower than this share of the first half, the second half counts as settled; a choice. */
    private static final double SETTLED = 0.5;

    private Cooling() {}

    /** Absent below two nights. */
    static Optional<String> sentence(List<FocusNight> nights) {
        if (nights.size() < FEWEST_NIGHTS) {
            return Optional.empty();
        }
        double early = Robust.median(
                nights.stream().mapToDouble(FocusNight::earlyPerHour).toArray());
        double late = Robust.median(
                nights.stream().mapToDouble(FocusNight::latePerHour).toArray());
        if (!(early < 0)) {
            return Optional.empty();
        }
        String rates = say(
                "Over %s nights it cooled by %s degrees an hour in the first half and by %s in the second",
                nights.size(), fixed(-early, 1), fixed(-late, 1));
        return Optional.of(
                -late < SETTLED * -early
                        ? rates + ": a cool-down that waiting before the first focus shortens."
                        : rates + ": it goes on all night, so waiting before the first focus does not end it.");
    }
}
