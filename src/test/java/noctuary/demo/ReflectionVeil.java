package noctuary.demo;

import static noctuary.demo.Glow.add;

import java.util.List;

/** Dust combed into streaks that shines in the light of the bright stars near it (Pleiades). */
record ReflectionVeil(List<CatalogueStar> lamps, Turbulence noise) implements Glow {
    private static final double COMB = StrictMath.toRadians(-22);

    @Override
    public void addTo(double x, double y, double[] bands) {
        double bend = 110 * noise.fractal(x / 380, y / 380, 4);
        double along = x * StrictMath.cos(COMB) + y * StrictMath.sin(COMB);
        double across = -x * StrictMath.sin(COMB) + y * StrictMath.cos(COMB) + bend;
        double streaks = noise.ridged(along / 460, across / 42, 5);
        double hairs = noise.ridged(along / 300 + 11, across / 17, 4);
        double clouds = Math.max(0.04, 0.55 + 0.95 * noise.fractal(x / 520 + 2, y / 520, 6));
        double dust = clouds * (0.8 + 0.42 * streaks + 0.12 * hairs);
        double lit = 0;
        for (CatalogueStar lamp : lamps) {
            double dx = x - lamp.eastArcsec();
            double dy = y - lamp.northArcsec();
            double reach = 1 + (dx * dx + dy * dy) / (130.0 * 130);
            lit += lamp.green() / StrictMath.pow(reach, 0.92);
        }
        double light = 7.5e-7 * lit * dust;
        add(bands, light, 0.42, 0.78, 1.30);
        add(bands, Glow.brightness(24.6) * clouds, 1.0, 0.85, 0.7);
    }
}
