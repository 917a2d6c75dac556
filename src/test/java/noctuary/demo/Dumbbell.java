package noctuary.demo;

import static noctuary.demo.Glow.add;

/** The Dumbbell's waist and two bright caps inside a fainter, bluer shell (M27). */
record Dumbbell(Turbulence noise) implements Glow {
    private static final double AXIS = StrictMath.toRadians(32);

    @Override
    public void addTo(double x, double y, double[] bands) {
        double along = x * StrictMath.sin(AXIS) + y * StrictMath.cos(AXIS);
        double across = x * StrictMath.cos(AXIS) - y * StrictMath.sin(AXIS);
        double u = along + 14 * noise.fractal(x / 70, y / 70, 4);
        double v = across + 14 * noise.fractal(x / 70 + 20, y / 70, 4);
        double shell = Math.sqrt(u * u / (190.0 * 190) + v * v / (232.0 * 232));
        if (shell > 2.2) {
            return;
        }
        double waist = 80 + 70 * StrictMath.pow(Math.min(1.3, Math.abs(u) / 165), 1.7);
        double ball = edge(shell, 0.93, 0.06);
        double body = edge(Math.abs(v) / waist, 1, 0.24) * ball;
        double turned = Math.abs(StrictMath.atan2(v, Math.abs(u)));
        double cap = StrictMath.exp(-StrictMath.pow((shell - 0.80) / (shell < 0.80 ? 0.17 : 0.09), 2))
                * edge(turned, 0.66, 0.2);
        double ears = edge(shell, 0.98, 0.09);
        double threads = noise.stirred(x / 62, y / 62, 6, 0.7);
        double clouds = 1 + 0.5 * noise.fractal(x / 48 + 7, y / 48, 5);
        double oxygen = 0.55 * body * clouds + 0.26 * ears * (0.6 + 0.9 * threads) + 0.2 * cap;
        double rim = StrictMath.exp(-StrictMath.pow((shell - 0.97) / 0.1, 2));
        double hydrogen = cap * (0.4 + 1.7 * threads * threads) + 0.35 * body * threads + 0.16 * rim * (0.4 + threads);
        double base = Glow.brightness(19.3);
        add(bands, base * oxygen, 0.14, 1.0, 0.95);
        add(bands, base * hydrogen, 0.05, 0.14, 0.20);
        double halo = 0.012 * StrictMath.exp(-StrictMath.pow((shell - 1.0) / 0.6, 2));
        bands[LINE] += base * (0.95 * hydrogen + 0.16 * oxygen + halo);
    }

    /** 1 inside {@code limit}, 0 outside, with a soft border. */
    static double edge(double value, double limit, double softness) {
        return 1 / (1 + StrictMath.exp(Math.max(-40, Math.min(40, (value - limit) / softness * 2.2))));
    }
}
