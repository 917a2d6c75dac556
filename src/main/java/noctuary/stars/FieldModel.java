package noctuary.stars;

/**
 * The width of stars as a smooth surface over the field: centre, a linear term (tilt) and a quadratic one. Absent terms
 * (too few stars) are NaN. Each figure has its standard error.
 *
 * @param centreFwhmPx width at the middle of the field
 * @param cornerExcessPx mean of the four corners less the centre
 * @param tiltPx change of width over the length of the diagonal in the direction in which it grows fastest
 * @param tiltDirectionDeg in which width grows, from +x towards +y
 * @param curvaturePx rise from the centre to a corner of the part that is the same in all directions
 * @param oneWayPx how much more width grows from the centre to a corner's distance along one axis, both ways, than across
 *     it: what a tilt does whose middle is in focus
 * @param oneWayDirectionDeg of that axis, -90 to 90
 * @param spreadPx of single stars about the surface that noise does not explain
 */
public record FieldModel(
        int stars,
        double centreFwhmPx,
        double centreErrorPx,
        double cornerExcessPx,
        double cornerExcessErrorPx,
        double tiltPx,
        double tiltErrorPx,
        double tiltDirectionDeg,
        double curvaturePx,
        double curvatureErrorPx,
        double oneWayPx,
        double oneWayErrorPx,
        double oneWayDirectionDeg,
        double spreadPx) {}
