package noctuary.demo;

import static noctuary.demo.Glow.add;

/** A shell swept up by a stellar wind: brighter on one side, laced with filaments, in a thin red field (NGC 6888). */
record Crescent(Turbulence noise) implements Glow {
    private static final double AXIS = StrictMath.toRadians(48);

    @Override
    public void addTo(double x, double y, double[] bands) {
        double along = (x + 25) * StrictMath.sin(AXIS) + (y - 10) * StrictMath.cos(AXIS);
        double across = (x + 25) * StrictMath.cos(AXIS) - (y - 10) * StrictMath.sin(AXIS);
        double u = along / 500 + 0.11 * noise.fractal(x / 260, y / 260, 4);
        double v = across / 340 + 0.11 * noise.fractal(x / 260 + 30, y / 260, 4);
        double r = Math.sqrt(u * u + v * v);
        double theta = StrictMath.atan2(v, u);
        double bright = 0.30 + 0.85 * StrictMath.pow(0.5 - 0.5 * StrictMath.cos(theta - 0.95), 1.5);
        double shell = StrictMath.exp(-StrictMath.pow((r - 0.93) / (r < 0.93 ? 0.17 : 0.055), 2));
        double outer = StrictMath.exp(-StrictMath.pow((r - 1.02) / 0.022, 2));
        double threads = noise.stirred(x / 170, y / 170, 6, 0.9);
        double fine = noise.stirred(x / 75 + 12, y / 75, 5, 0.7);
        double inside = Dumbbell.edge(r, 0.95, 0.1);
        double lace = StrictMath.pow(threads, 2.0) * 1.5 + 0.6 * fine * fine;
        double field = 0.055 + 0.075 * Math.max(0, 0.35 + noise.fractal(x / 620 + 3, y / 620, 5));
        double base = Glow.brightness(20.6);
        double line = bright * (shell * (0.12 + 1.25 * lace) + 0.28 * outer * (0.3 + fine))
                + 0.34 * inside * lace * (0.35 + 0.65 * bright);
        bands[LINE] += base * (line + field);
        double oxygen = 0.20 * StrictMath.exp(-StrictMath.pow((r - 1.03) / 0.07, 2)) + 0.10 * inside * (0.5 + threads);
        add(bands, base * oxygen, 0.02, 1.0, 0.95);
    }
}
