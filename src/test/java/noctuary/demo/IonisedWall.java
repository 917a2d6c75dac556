package noctuary.demo;

import static noctuary.demo.Glow.add;

/**
 * The wall in the North America nebula: a bright ionisation front folded along the border of a dark cloud (NGC 7000).
 */
record IonisedWall(Turbulence noise) implements Glow {

    @Override
    public void addTo(double x, double y, double[] bands) {
        double bend = 300 * noise.fractal(x / 900, y / 900, 5) + 70 * noise.fractal(x / 210, y / 210 + 9, 4);
        double s = 0.84 * x + 0.40 * y + 150 * StrictMath.sin((y - 0.3 * x) / 420) + bend + 120;
        double depth = s / 230;
        double threads = noise.stirred(x / 300, y / 300, 6, 0.8);
        double fine = noise.stirred(x / 130 + 7, y / 130, 5, 0.6);
        double ahead = Dumbbell.edge(-depth, 0.0, 0.10);
        double front = 1.5 * StrictMath.exp(-Math.max(0, depth) * 0.75) * ahead;
        double ridge = StrictMath.exp(-StrictMath.pow((depth - 0.10) / 0.10, 2));
        double second = StrictMath.exp(-StrictMath.pow((depth - 0.85 - 0.4 * noise.at(x / 350, y / 350)) / 0.16, 2));
        double clouds = Math.max(0.12, 0.75 + 0.75 * noise.fractal(x / 430 - 9, y / 430, 6));
        double line = front * clouds * (0.55 + 0.6 * threads)
                + ridge * (0.15 + 1.1 * threads) * (0.5 + clouds)
                + 0.33 * second * (0.3 + fine)
                + 0.16 * ahead;
        double dark =
                1.7 * StrictMath.pow(noise.stirred(x / 520 + 4, y / 520 - 8, 5, 1.0), 1.6) * (0.4 + 0.6 * (1 - ridge));
        double base = Glow.brightness(20.3);
        double light = base * line * StrictMath.exp(-dark) + base * 0.11 * clouds;
        bands[LINE] += light;
        add(bands, light, 0.05, 0.20, 0.17);
        add(bands, base * 0.14 * front * StrictMath.exp(-dark), 0.05, 0.55, 0.65);
    }
}
