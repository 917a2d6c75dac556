package noctuary.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the nights say of a rig.
 *
 * @param seeing the keeper's own star widths, all rigs, arcsec
 * @param sampling pixels across the middle of those widths with this rig
 * @param focal effective focal length as the sky told it
 * @param shapes spacing and tilt as the star shapes tell, latest first
 * @param swaps one part exchanged, a table each
 * @param warmth what expansion alone foretells of the focus, a sentence
 * @param findings sentences for page and check
 */
public record RigDesk(
        Optional<Spread> seeing,
        Optional<Spread> sampling,
        Optional<Focal> focal,
        List<Shape> shapes,
        List<WhatIf> swaps,
        Optional<String> warmth,
        List<Finding> findings) {
    public RigDesk {
        shapes = List.copyOf(shapes);
        swaps = List.copyOf(swaps);
        findings = List.copyOf(findings);
    }

    /** 16th, 50th and 84th percentiles over nights. */
    public record Spread(int nights, double low, double median, double high) {}

    /**
     * @param measuredMm median over the nights
     * @param spreadMm of single nights about it; 0 for one
     * @param nominalMm as written, reducer included
     * @param factor of the reducer as it truly was: measured over the telescope's own focal length
     */
    public record Focal(
            int nights, double measuredMm, double spreadMm, OptionalDouble nominalMm, OptionalDouble factor) {}

    /**
     * One night's field, pixels.
     *
     * @param risePx the same to all corners: spacing
     * @param tiltPx across the diagonal
     * @param says what that looks like, how sure
     */
    public record Shape(
            String slug,
            LocalDate night,
            double centrePx,
            double risePx,
            double riseErrorPx,
            double tiltPx,
            double tiltErrorPx,
            String says) {}
}
