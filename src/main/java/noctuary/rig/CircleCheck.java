package noctuary.rig;

import java.util.Optional;
import java.util.OptionalDouble;

/** The sensor's diagonal against the circle that the optics light. */
final class CircleCheck {
    private CircleCheck() {}

    static Optional<Check> of(OptionalDouble diagonalMm, OptionalDouble circleMm) {
        if (diagonalMm.isEmpty() || circleMm.isEmpty()) {
            return Optional.empty();
        }
        double diagonal = diagonalMm.getAsDouble();
        double circle = circleMm.getAsDouble();
        boolean inside = diagonal <= circle;
        String verdict = inside
                ? Words.say("the corners are inside, with %s to spare on each side.", Words.mm((circle - diagonal) / 2))
                : Words.say(
                        "the corners are outside by %s on each side and will be dark or poorly shaped.",
                        Words.mm((diagonal - circle) / 2));
        return Optional.of(new Check(
                "image-circle",
                inside ? Check.Level.OK : Check.Level.WARN,
                Words.say(
                        "The sensor is %s from corner to corner, the image circle %s wide: %s",
                        Words.mm(diagonal), Words.mm(circle), verdict)));
    }
}
