package noctuary.draw;

import java.util.List;
import noctuary.stats.Robust;

/**
 * What many star shapes have in common. Long axes are averaged as vectors of twice the angle, so that shapes without a
 * common direction average to round.
 *
 * @param common ellipticity of the average shape
 * @param angleDeg of its long axis, -90 to 90
 */
record MeanShape(double medianFwhmPx, double medianEllipticity, double common, double angleDeg) {
    static MeanShape of(List<StarShape> stars) {
        double e1 = stars.stream()
                .mapToDouble(s -> s.ellipticity() * Math.cos(2 * Math.toRadians(s.angleDeg())))
                .average()
                .orElse(0);
        double e2 = stars.stream()
                .mapToDouble(s -> s.ellipticity() * Math.sin(2 * Math.toRadians(s.angleDeg())))
                .average()
                .orElse(0);
        return new MeanShape(
                Robust.median(stars.stream().mapToDouble(StarShape::fwhmPx).toArray()),
                Robust.median(stars.stream().mapToDouble(StarShape::ellipticity).toArray()),
                Math.hypot(e1, e2),
                Math.toDegrees(Math.atan2(e2, e1) / 2));
    }

    String sentence() {
        String text = "Median FWHM " + Digits.fixed(medianFwhmPx, 2) + " px, median ellipticity "
                + Digits.fixed(medianEllipticity, 2);
        boolean shared = common > 0.02 && common > medianEllipticity / 2;
        return text
                + (shared
                        ? "; most long axes lie near " + Digits.fixed(angleDeg, 0) + "°."
                        : "; the long axes share no direction.");
    }
}
