package noctuary.demo;

import static noctuary.demo.Glow.add;

/**
 * A galaxy seen along its disc: thin light, a torn lane of dust through the middle, a small bulge, and, where there is
 * one, gas blown out of the disc.
 *
 * @param lengthArcsec scale length along the disc
 * @param heightArcsec scale height
 * @param outflow brightness of the gas above and below, relative to the disc
 */
record EdgeOnGalaxy(
        double positionAngleDeg,
        double lengthArcsec,
        double heightArcsec,
        double discMag,
        double dust,
        double laneArcsec,
        double ragged,
        double outflow,
        Turbulence noise)
        implements Glow {

    @Override
    public void addTo(double x, double y, double[] bands) {
        double angle = StrictMath.toRadians(positionAngleDeg);
        double along = x * StrictMath.sin(angle) + y * StrictMath.cos(angle);
        double across = x * StrictMath.cos(angle) - y * StrictMath.sin(angle);
        double u = along / lengthArcsec;
        double v = across / heightArcsec;
        double base = Glow.brightness(discMag);
        double rim = StrictMath.exp(-Math.abs(u) - StrictMath.pow(Math.abs(u) / 3.4, 6));
        double lens = Math.sqrt(u * u + v * v + 0.02);
        double disc = 1.5 * base * StrictMath.exp(-lens - StrictMath.pow(lens / 4.2, 6));
        double grain = 1 + ragged * noise.fractal(along / 30, across / 15, 6);
        double bulge = 1.1 * base * StrictMath.exp(-1.9 * Math.sqrt(u * u * 22 + v * v * 0.5));
        double[] light = new double[4];
        add(light, disc * Math.max(0.1, grain), 1.0, 1.0, 0.92);
        add(light, bulge, 1.25, 1.0, 0.65);
        double veil = lane(along, across) * StrictMath.exp(-Math.abs(u) / 2.6);
        bands[RED] += light[RED] * StrictMath.exp(-0.72 * veil);
        bands[GREEN] += light[GREEN] * StrictMath.exp(-veil);
        bands[BLUE] += light[BLUE] * StrictMath.exp(-1.35 * veil);
        bands[LINE] += base * rim * knots(along, across) * StrictMath.exp(-0.5 * veil) + blown(along, across, base);
    }

    private double lane(double along, double across) {
        double wander = laneArcsec * 0.35 * noise.fractal(along / 45, 3.3, 3);
        double z = (across - wander) / laneArcsec;
        double tendrils = noise.stirred(along / 26, across / 30, 5, 0.5);
        double torn = noise.ridged(along / 15 + 9, across / 12, 4);
        double reach = StrictMath.exp(-0.5 * z * z / 3.2);
        return dust * (StrictMath.exp(-0.5 * z * z) * (0.55 + 0.6 * torn) + 0.5 * reach * tendrils * tendrils);
    }

    private double knots(double along, double across) {
        double clump = Math.max(0, noise.fractal(along / 7 + 50, across / 7, 3) - 0.18);
        double z = across / (1.2 * laneArcsec);
        return 9 * clump * clump * StrictMath.exp(-z * z);
    }

    private double blown(double along, double across, double base) {
        double spread = lengthArcsec * 0.45 + Math.abs(across) * 0.35;
        double cone = StrictMath.exp(-StrictMath.pow(along / spread, 2) - Math.abs(across) / (3.4 * heightArcsec));
        double haze = Math.max(0, 0.6 + 1.1 * noise.fractal(along / 26, across / 80, 5));
        return outflow * base * cone * haze;
    }
}
