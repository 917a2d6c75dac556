package noctuary.advice;

import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.say;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import noctuary.rig.Expansion;
import noctuary.rig.RigFigures;

/** What the expansion of the tube alone foretells of the focus. */
final class Warmth {
    private Warmth() {}

    /** Absent without focal length and focal ratio. */
    static Optional<String> sentence(RigFigures figures) {
        if (figures.effectiveFocalLengthMm().isEmpty()
                || figures.depthOfFocusUm().isEmpty()) {
            return Optional.empty();
        }
        double length = figures.effectiveFocalLengthMm().getAsDouble();
        double depth = figures.depthOfFocusUm().getAsDouble();
        List<String> materials = Arrays.stream(Expansion.values())
                .map(m -> say("%s in %s", fixed(m.kelvinsFor(length, depth), 1), m.label()))
                .toList();
        return Optional.of(say(
                "By expansion alone, a tube as long as the focal length leaves the depth of focus (± %s µm) after so many "
                        + "degrees: %s. Lenses and mirrors move too, which no note tells; your own nights count more.",
                fixed(depth, 0), Words.list(materials)));
    }
}
