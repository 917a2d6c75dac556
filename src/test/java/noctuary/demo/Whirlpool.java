package noctuary.demo;

import static noctuary.demo.Glow.add;

/** Two galaxies and what passes between them (M51 and NGC 5195). */
record Whirlpool(Glow main, Glow companion, Turbulence noise) implements Glow {

    static Whirlpool of(int seed) {
        return new Whirlpool(
                new SpiralGalaxy(
                        0, 0, 170, 24, 95, 19.7, 17, 18.3, 2, -19, 1.7, 0.5, 1.3, 0, 0.9, new Turbulence(seed)),
                new SpiralGalaxy(
                        70, 255, 80, 35, 36, 20.3, 17, 18.5, 2, 40, 0.15, 0.4, 1.6, 0, 0, new Turbulence(seed + 1)),
                new Turbulence(seed + 2));
    }

    @Override
    public void addTo(double x, double y, double[] bands) {
        main.addTo(x, y, bands);
        companion.addTo(x, y, bands);
        double curve = 62 + 40 * StrictMath.sin((y - 80) / 120);
        double along = StrictMath.exp(-StrictMath.pow((y - 190) / 90, 2));
        double across = StrictMath.exp(-StrictMath.pow((x - curve) / 20, 2));
        double bridge = along * across * (0.8 + 0.6 * noise.fractal(x / 25, y / 25, 4));
        add(bands, Glow.brightness(21.9) * bridge, 0.85, 1, 1.1);
        double shell = Math.sqrt(StrictMath.pow((x - 90) / 1.2, 2) + StrictMath.pow(y - 255, 2));
        double plume = StrictMath.exp(-shell / 95) * (0.7 + 0.6 * noise.fractal(x / 90, y / 90, 4));
        add(bands, Glow.brightness(23.0) * plume, 1.0, 1, 0.9);
    }
}
