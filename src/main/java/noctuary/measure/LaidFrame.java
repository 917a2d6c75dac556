package noctuary.measure;

import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.match.Alignment;

/**
 * A frame and how it lies on the first.
 *
 * @param to from the first frame to this one; absent for the first itself
 * @param light of this frame over that of the first
 */
record LaidFrame(FrameSheet sheet, Optional<Alignment> to, double light) {
    static LaidFrame first(FrameSheet sheet) {
        return new LaidFrame(sheet, Optional.empty(), 1);
    }

    /** Absent when the stars do not match, or too few are common. */
    static Optional<LaidFrame> on(FrameSheet first, FrameSheet sheet) {
        return FrameMatch.of(first, sheet).flatMap(match -> {
            OptionalDouble light = match.fluxRatio();
            return light.isPresent() && light.getAsDouble() > 0
                    ? Optional.of(new LaidFrame(sheet, Optional.of(match.alignment()), light.getAsDouble()))
                    : Optional.empty();
        });
    }

    double level() {
        return sheet.measurement().planes().get(0).background().level();
    }

    /** In counts of the first frame. */
    double noise() {
        return sheet.measurement().planes().get(0).background().noise() / light;
    }

    double seconds() {
        return sheet.report().exposureSeconds().orElse(0);
    }

    /** Where the middle of the first frame lies, less where it lay. */
    double shiftX() {
        return shift(0);
    }

    double shiftY() {
        return shift(1);
    }

    private double shift(int axis) {
        double x = (sheet.measurement().width() - 1) / 2.0;
        double y = (sheet.measurement().height() - 1) / 2.0;
        return to.map(t -> t.apply(x, y)[axis] - (axis == 0 ? x : y)).orElse(0.0);
    }
}
