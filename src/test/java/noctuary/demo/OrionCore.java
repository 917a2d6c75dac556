package noctuary.demo;

import static noctuary.demo.Glow.add;

/** The Orion nebula's heart: a basin of light around the Trapezium, the bar, the dark bay, the wings (M42, M43). */
record OrionCore(Turbulence noise) implements Glow {

    @Override
    public void addTo(double x, double y, double[] bands) {
        double wx = x + 95 * noise.fractal(x / 330, y / 330, 5);
        double wy = y + 95 * noise.fractal(x / 330 + 40, y / 330, 5);
        double theta = StrictMath.atan2(wy, wx);
        double stretch = 1 + 0.30 * StrictMath.cos(theta - 3.9) + 0.20 * StrictMath.cos(2 * (theta - 0.4));
        double r = Math.sqrt(wx * wx + wy * wy) / stretch;
        double core = StrictMath.exp(-r / 78);
        double basin = 0.15 * StrictMath.exp(-r / 260);
        double outer = 0.030 * StrictMath.exp(-StrictMath.pow(r / 900, 2));
        double threads = noise.stirred(x / 190, y / 190, 6, 0.9);
        double fine = noise.stirred(x / 70 - 5, y / 70, 5, 0.7);
        double texture = 0.45 + 0.8 * threads + 0.35 * fine;
        double light = (core + basin + outer) * texture + bar(x, y) * (0.6 + 0.8 * fine) + wings(wx, wy) * texture;
        double veil = bay(wx, wy) + 0.55 * StrictMath.pow(noise.stirred(x / 420 + 3, y / 420, 5, 1.0), 2.2);
        double base = Glow.brightness(15.9);
        double seen = base * light * StrictMath.exp(-veil);
        double heat = StrictMath.exp(-r / 210);
        double round = neighbour(x, y, base);
        bands[LINE] += seen * (0.95 - 0.30 * heat) + round;
        add(bands, round, 0.1, 0.3, 0.42);
        add(bands, seen, 0.16, 0.30 + 0.60 * heat, 0.40 + 0.36 * heat);
        add(bands, base * 0.006 * StrictMath.exp(-r / 1100) * StrictMath.exp(-0.6 * veil), 0.35, 0.65, 1.15);
    }

    private double bar(double x, double y) {
        double along = 0.78 * x + 0.62 * y + 10;
        double across = -0.62 * x + 0.78 * y + 118 + 10 * noise.fractal(x / 60, y / 60, 3);
        double sharp = across > 0 ? 26 : 7;
        return 0.20 * StrictMath.exp(-Math.abs(across) / sharp - StrictMath.pow((along - 40) / 150, 2));
    }

    private double wings(double x, double y) {
        double west = Math.sqrt(StrictMath.pow(x + 120, 2) + StrictMath.pow(y + 240, 2));
        double arc = StrictMath.exp(-StrictMath.pow((west - 430) / 75, 2)) * Dumbbell.edge(y, 150, 160);
        double east = Math.sqrt(StrictMath.pow(x - 180, 2) + StrictMath.pow((y + 150) * 1.2, 2));
        double fan = StrictMath.exp(-StrictMath.pow((east - 330) / 90, 2)) * Dumbbell.edge(-x, -40, 120);
        return 0.030 * arc + 0.024 * fan;
    }

    /** The dark cloud that reaches in from the north-east. */
    private double bay(double x, double y) {
        double along = 0.56 * x + 0.83 * y;
        double across = 0.83 * x - 0.56 * y;
        double mouth = Dumbbell.edge(-along, -105, 60)
                * StrictMath.exp(-StrictMath.pow((across - 20) / (70 + 0.42 * Math.max(0, along)), 2));
        double north = StrictMath.exp(-StrictMath.pow((y - 330 - 0.1 * x) / 55, 2));
        return 2.6 * mouth + 1.7 * north;
    }

    /** The round nebula to the north with its dark notch (M43). */
    private double neighbour(double x, double y, double base) {
        double dx = x - 60;
        double dy = y - 470;
        double r = Math.sqrt(dx * dx + dy * dy) / (1 + 0.25 * noise.fractal(x / 110, y / 110, 4));
        double notch = 1.8 * StrictMath.exp(-StrictMath.pow((dx - 62) / 34, 2)) * Dumbbell.edge(-dy, 60, 60);
        double cloud = 0.55 + 0.8 * noise.stirred(x / 120, y / 120 + 5, 5, 0.7);
        return base * 0.075 * StrictMath.exp(-StrictMath.pow(r / 120, 2)) * cloud * StrictMath.exp(-notch);
    }
}
