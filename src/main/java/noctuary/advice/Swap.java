package noctuary.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.rig.RigFigures;

/**
 * A rig as it is, or with the camera of another.
 *
 * @param optics id of the rig whose optics and mount these are
 * @param camera id of the rig whose camera this is; the same for a rig as it is
 * @param sampling pixels across a star in the keeper's own seeing
 * @param shimMm spacing still wanted: positive for more, negative for less
 * @param cost by currency, with the other camera's price instead of its own
 * @param troubles what the checks say is wrong or doubtful
 * @param measured what its nights gave; absent for a rig that does not exist
 */
public record Swap(
        String optics,
        String camera,
        RigFigures figures,
        OptionalDouble sampling,
        OptionalDouble shimMm,
        Map<String, BigDecimal> cost,
        List<String> troubles,
        Optional<Measured> measured) {
    public Swap {
        troubles = List.copyOf(troubles);
    }

    /** @param fwhmArcsec median over the nights */
    public record Measured(int nights, OptionalDouble fwhmArcsec, double hours) {}

    public boolean asItIs() {
        return optics.equals(camera);
    }
}
