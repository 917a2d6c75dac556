package noctuary.stars;

import noctuary.stars.sim.SimulatedFrame;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/** The simulated frames of the truth table: 1500 x 1000 pixels, 150 hot pixels. */
record SkyScenes(String name, double fwhm, double ellipticity, double beta, boolean special, SimulatedFrame frame) {
    private static final int WIDTH = 1500;
    private static final int HEIGHT = 1000;

    static SkyScenes plain(double fwhm, double ellipticity, double beta, long seed) {
        SkySimulator sky = sky(fwhm, ellipticity, beta, seed).stars(300, 8, 300, Math.max(12, 5 * fwhm));
        return new SkyScenes("plain", fwhm, ellipticity, beta, false, sky.frame());
    }

    /** Stars may come as close as two widths. */
    static SkyScenes crowded(double fwhm, long seed) {
        int count = (int) (1500 * 1000 / (70 * fwhm * fwhm));
        SkySimulator sky = sky(fwhm, 0.1, 3, seed).stars(count, 8, 300, 2 * fwhm);
        return new SkyScenes("crowded", fwhm, 0.1, 3, true, sky.frame());
    }

    static SkyScenes nebula(double fwhm, long seed) {
        SkySimulator sky =
                sky(fwhm, 0.1, 3, seed).glow(SkyScenes::filaments).stars(300, 8, 300, Math.max(12, 5 * fwhm));
        return new SkyScenes("nebula", fwhm, 0.1, 3, true, sky.frame());
    }

    static SkyScenes nearlyEmpty(double fwhm, long seed) {
        SkySimulator sky = sky(fwhm, 0.1, 3, seed).stars(10, 20, 200, 40);
        return new SkyScenes("nearly empty", fwhm, 0.1, 3, true, sky.frame());
    }

    /** Of sky, nebula and readout at a place, electrons²: what {@link SkySimulator} assumes unless told. */
    static double variance(String scene, double x, double y) {
        return 100 + 25 + (scene.equals("nebula") ? filaments(x, y) : 0);
    }

    @Override
    public String toString() {
        return name + " " + fwhm + " px, e " + ellipticity + ", beta " + beta;
    }

    private static SkySimulator sky(double fwhm, double ellipticity, double beta, long seed) {
        return new SkySimulator(WIDTH, HEIGHT, seed)
                .shape(StarShape.constant(fwhm, ellipticity, 30, beta))
                .hotPixels(150);
    }

    /** Broad glow with filaments down to some twenty pixels, up to nine times the sky. */
    static double filaments(double x, double y) {
        double broad = 300 * Math.exp(-(sq((x - 700) / 420) + sq((y - 520) / 300)));
        double warp = 40 * Math.sin(x / 97) + 30 * Math.sin(y / 61);
        double ridge = Math.sin((x + warp) / 31) * Math.sin((y - warp) / 23);
        double shell = Math.exp(-sq((Math.hypot(x - 760, y - 480) - 260 + warp / 3) / 9));
        return broad * (1 + 0.6 * ridge * ridge) + 250 * shell;
    }

    private static double sq(double v) {
        return v * v;
    }
}
