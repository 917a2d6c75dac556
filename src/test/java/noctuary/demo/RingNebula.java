package noctuary.demo;

import static noctuary.demo.Glow.add;

/** The Ring: blue-green inside, a braided bright torus, a red outer rim and a faint halo (M57). */
record RingNebula(Turbulence noise) implements Glow {
    private static final double AXIS = StrictMath.toRadians(62);

    @Override
    public void addTo(double x, double y, double[] bands) {
        double along = x * StrictMath.sin(AXIS) + y * StrictMath.cos(AXIS);
        double across = x * StrictMath.cos(AXIS) - y * StrictMath.sin(AXIS);
        double u = along / 37 + 0.05 * noise.fractal(x / 12, y / 12, 3);
        double v = across / 28.5 + 0.05 * noise.fractal(x / 12 + 9, y / 12, 3);
        double r = Math.sqrt(u * u + v * v);
        if (r > 5) {
            return;
        }
        double theta = StrictMath.atan2(v, u);
        double ends = 1 - 0.28 * StrictMath.pow(StrictMath.cos(theta), 4);
        double braid = 0.75 + 0.7 * noise.stirred(x / 17, y / 17, 5, 0.6);
        double torus = StrictMath.exp(-StrictMath.pow((r - 0.86) / (r < 0.86 ? 0.24 : 0.19), 2)) * ends;
        double rim = StrictMath.exp(-StrictMath.pow((r - 1.07) / 0.15, 2)) * ends;
        double inside = Dumbbell.edge(r, 0.92, 0.16);
        double base = Glow.brightness(17.6);
        add(bands, base * torus * braid, 0.28, 1.0, 0.72);
        add(bands, base * 0.34 * inside * (0.85 + 0.3 * noise.fractal(x / 20, y / 20, 4)), 0.16, 0.85, 1.25);
        double halo = StrictMath.exp(-StrictMath.pow(r / 2.3, 4)) * (0.4 + noise.stirred(x / 26 + 4, y / 26, 5, 0.9));
        bands[LINE] += base * (0.72 * torus * braid + 0.95 * rim * braid + 0.05 * inside + 0.012 * halo);
        add(bands, base * 0.006 * halo, 0.1, 0.5, 0.6);
    }
}
