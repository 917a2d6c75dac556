package noctuary.demo;

import java.util.List;

/**
 * How a star looks anywhere on the sensor: squared widths add up, as tensors where they have a direction.
 *
 * @param spacingErrorMm of the corrector, which draws stars out along the radius, growing with its square
 */
record Optics(DemoRig rig, Pointing pointing, double spacingErrorMm) {
    private static final double RADIAL_PX_PER_MM = 2.9;
    private static final double TANGENTIAL_PX_PER_MM = 1.5;

    Shape shape(double x, double y, List<Moment> moments) {
        double xx = 0;
        double yy = 0;
        double xy = 0;
        double half = Math.sqrt(pointing.width() * pointing.width() + pointing.height() * pointing.height()) / 2.0;
        double dx = (x - pointing.width() / 2.0) / half;
        double dy = (y - pointing.height() / 2.0) / half;
        double lean = 1 + rig.tilt() * dx;
        double east = pointing.cd11() / pointing.arcsecPerPx();
        double eastUp = pointing.cd12() / pointing.arcsecPerPx();
        for (Moment moment : moments) {
            double round = square(moment.fwhmArcsec() / pointing.arcsecPerPx() * lean);
            double along = square(moment.guidingFwhmArcsec() / pointing.arcsecPerPx());
            xx += round + along * east * east;
            yy += round + along * eastUp * eastUp;
            xy += along * east * eastUp;
        }
        xx /= moments.size();
        yy /= moments.size();
        xy /= moments.size();
        double radial = square(RADIAL_PX_PER_MM * spacingErrorMm);
        double tangential = square(TANGENTIAL_PX_PER_MM * spacingErrorMm);
        double r2 = dx * dx + dy * dy;
        xx += r2 * (radial * dx * dx + tangential * dy * dy);
        yy += r2 * (radial * dy * dy + tangential * dx * dx);
        xy += r2 * (radial - tangential) * dx * dy;
        return Shape.of(xx, yy, xy);
    }

    private static double square(double value) {
        return value * value;
    }
}
