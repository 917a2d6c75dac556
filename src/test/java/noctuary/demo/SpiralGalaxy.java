package noctuary.demo;

import static noctuary.demo.Glow.add;

/**
 * A disc of stars with arms, dust along their inner edges, glowing knots on them, and a yellow bulge.
 *
 * @param eastArcsec centre, from the target's centre
 * @param positionAngleDeg of the major axis, north through east
 * @param inclinationDeg 0 face-on
 * @param scaleArcsec of the exponential disc
 * @param discMag surface magnitude of the disc's centre
 * @param bulgeMag surface magnitude at the bulge's effective radius
 * @param arms number of arms
 * @param pitchDeg angle of the arms, small is tightly wound; negative winds the other way
 * @param contrast of the arms, 0 none
 * @param patchiness 0 smooth arms, 1 broken into patches
 * @param dust optical depth of the lanes
 * @param torn 0 lanes that follow the arms, 1 lanes that wander and break off
 * @param knots strength of the glowing knots
 */
record SpiralGalaxy(
        double eastArcsec,
        double northArcsec,
        double positionAngleDeg,
        double inclinationDeg,
        double scaleArcsec,
        double discMag,
        double bulgeArcsec,
        double bulgeMag,
        int arms,
        double pitchDeg,
        double contrast,
        double patchiness,
        double dust,
        double torn,
        double knots,
        Turbulence noise)
        implements Glow {

    @Override
    public void addTo(double x, double y, double[] bands) {
        double angle = StrictMath.toRadians(positionAngleDeg);
        double dx = x - eastArcsec;
        double dy = y - northArcsec;
        double along = dx * StrictMath.sin(angle) + dy * StrictMath.cos(angle);
        double across = dx * StrictMath.cos(angle) - dy * StrictMath.sin(angle);
        double deep = across / StrictMath.cos(StrictMath.toRadians(inclinationDeg));
        double r = Math.sqrt(along * along + deep * deep) + 1e-3;
        double bulgeRadius = Math.sqrt(along * along + across * across / 0.7);
        double[] light = new double[4];
        disc(along, deep, r, light);
        double bulge = Glow.brightness(bulgeMag)
                * StrictMath.exp(-3.3 * (StrictMath.pow(bulgeRadius / bulgeArcsec, 0.6) - 1))
                * (across > 0 ? 1 : 0.97);
        add(bands, bulge, 1.25, 1.0, 0.62);
        for (int b = 0; b < light.length; b++) {
            bands[b] += light[b];
        }
    }

    private void disc(double along, double deep, double r, double[] light) {
        double px = along / scaleArcsec;
        double py = deep / scaleArcsec;
        double grain = Math.max(1, scaleArcsec / 130);
        double wound = StrictMath.atan2(deep, along)
                - StrictMath.log(r / scaleArcsec) / StrictMath.tan(StrictMath.toRadians(pitchDeg));
        double loose = 0.6 + 8 / (Math.abs(pitchDeg) + 4);
        double phase = arms * wound
                + loose
                        * noise.fractal(1.3 * Math.sqrt(grain) * px, 1.3 * Math.sqrt(grain) * py, 5)
                        * Math.min(1, 1.4 * r / scaleArcsec)
                + torn * 1.9 * noise.fractal(2.2 * px * Math.sqrt(grain) - 5, 2.2 * py * Math.sqrt(grain), 4);
        double inner = 1 - StrictMath.exp(-StrictMath.pow(r / (0.5 * scaleArcsec), 2));
        double arm = crest(phase, 3) * inner;
        double broken = 1
                - patchiness
                + patchiness
                        * Math.max(
                                0,
                                0.8
                                        + 2.1
                                                * noise.fractal(
                                                        3 * Math.sqrt(grain) * px + 40, 3 * Math.sqrt(grain) * py, 6));
        double fine = Math.max(0.1, 1 + 0.75 * noise.fractal(10 * grain * px, 10 * grain * py + 80, 4));
        double fade = StrictMath.exp(-r / scaleArcsec - StrictMath.pow(r / (4.6 * scaleArcsec), 6));
        double base = Glow.brightness(discMag) * fade;
        add(light, base * 0.6 * (0.8 + 0.2 * fine), 1.06, 1.0, 0.84);
        add(light, base * contrast * arm * broken * fine, 0.70, 0.93, 1.36);
        double spur = Math.max(0, noise.fractal(6 * px - 70, 6 * py, 4) - 0.12) * patchiness * inner;
        add(light, base * contrast * spur, 0.68, 0.92, 1.40);
        double veil = lanes(phase, px * Math.sqrt(grain), py * Math.sqrt(grain), inner)
                * (deep > 0 ? 1 + inclinationDeg / 110 : 1 - inclinationDeg / 160);
        light[RED] *= StrictMath.exp(-0.75 * veil);
        light[GREEN] *= StrictMath.exp(-veil);
        light[BLUE] *= StrictMath.exp(-1.35 * veil);
        double knot = knots * base * (crest(phase + 0.2, 4) + 0.2 * patchiness) * inner * knot(px * grain, py * grain);
        light[LINE] += knot;
        add(light, knot, 0.10, 0.34, 0.48);
    }

    private double lanes(double phase, double px, double py, double inner) {
        double lane = crest(phase + (pitchDeg > 0 ? -0.85 : 0.85), 5);
        double rough = noise.stirred(2.6 * px - 11, 2.6 * py + 7, 5, 0.5);
        double kept = 1 - torn + torn * Math.max(0, 0.45 + 2.2 * noise.fractal(1.3 * px + 21, 1.3 * py, 3));
        double web = noise.stirred(5.5 * px + 3, 5.5 * py - 5, 5, 0.6);
        return dust * (0.2 + 0.8 * inner) * (lane * (0.3 + 1.2 * rough) * kept + 0.5 * web * web * (0.4 + 0.6 * inner));
    }

    private double knot(double px, double py) {
        double clump = Math.max(0, noise.fractal(13 * px + 9, 13 * py - 60, 3) - 0.14);
        return 70 * clump * clump;
    }

    /** 1 on the crest, falling with the phase; sharper with {@code power}. */
    private static double crest(double phase, double power) {
        return StrictMath.exp(power * (StrictMath.cos(phase) - 1));
    }
}
