package noctuary.rig;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/** The light-sensitive area in millimetres, from pixel size and pixel counts. */
record Sensor(OptionalDouble widthMm, OptionalDouble heightMm) {

    static Sensor of(RigSpec.Camera camera) {
        return new Sensor(side(camera.pixelUm(), camera.width()), side(camera.pixelUm(), camera.height()));
    }

    OptionalDouble diagonalMm() {
        return Maybe.of(widthMm, heightMm, Math::hypot);
    }

    private static OptionalDouble side(OptionalDouble pixelUm, OptionalInt count) {
        return count.isPresent() ? Maybe.of(pixelUm, p -> p * count.getAsInt() / 1000) : OptionalDouble.empty();
    }
}
