package noctuary.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** Which of the attempts on a target the others are laid on. */
public final class SkyReference {
    private SkyReference() {}

    /**
     * The first, unless more than half of the others cannot be laid on it: it may be the one that shows something else,
     * and then the first that most others can be laid on takes its place.
     *
     * @param candidates most stars first
     * @param laid how many of the others can be laid on one
     */
    public static <T> Optional<T> choose(List<T> candidates, ToIntFunction<T> laid) {
        Optional<T> best = Optional.empty();
        int most = -1;
        for (T candidate : candidates) {
            int here = laid.applyAsInt(candidate);
            if (here > most) {
                best = Optional.of(candidate);
                most = here;
            }
            if (2 * most >= candidates.size() - 1) {
                break;
            }
        }
        return best;
    }
}
