package noctuary.advice;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.rig.Check;
import noctuary.rig.RigFigures;

/**
 * A rig as it is, or with one part of another: a column of a {@link WhatIf}.
 *
 * @param kind what {@code rig} gives
 * @param rig id of the rig that gives the part, or that is shown
 * @param until the day on which the part was replaced, for one that the rig had earlier
 * @param light of the sky that one pixel gathers, over that of the rig as it is: square of aperture times scale
 * @param sampling pixels across a star in the keeper's own seeing
 * @param shimMm spacing still wanted: positive for more, negative for less
 * @param cost by currency; empty where a price is missing on one side
 * @param measured what its nights gave; absent for what was never used
 */
public record Swap(
        Kind kind,
        String rig,
        Optional<LocalDate> until,
        RigFigures figures,
        OptionalDouble light,
        OptionalDouble sampling,
        OptionalDouble shimMm,
        OptionalDouble ratedKg,
        Map<String, BigDecimal> cost,
        Optional<Measured> measured) {

    /** The rig as it is; it with a part of another; it as it once was; another as it is. */
    public enum Kind {
        OWN,
        PART,
        EARLIER,
        WHOLE
    }

    /**
     * @param fwhmArcsec median over the entries
     * @param ellipticity median over the entries
     */
    public record Measured(int nights, double hours, OptionalDouble fwhmArcsec, OptionalDouble ellipticity) {}

    /** What the checks say is wrong or doubtful. */
    public List<Check> troubles() {
        return figures.checks().stream()
                .filter(c -> c.level() != Check.Level.OK)
                .toList();
    }
}
