package noctuary.demo;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What falls on the sensor without noise: electrons a second in each pixel of each plane.
 *
 * @param skyRate of the empty sky in the middle of the field, a plane each
 */
record Scene(float[][] planes, double[] skyRate, int width, int height) {
    private static final double EXTINCTION = 0.18;

    /** @param moments one for a frame, several over the night for a stack */
    static Scene of(PlannedEntry entry, DemoSky target, Optics optics, Passband[] bands, List<Moment> moments) {
        Pointing pointing = optics.pointing();
        DemoRig rig = optics.rig();
        double perPixel = rig.zeroPointEPerS() * pointing.arcsecPerPx() * pointing.arcsecPerPx();
        double through = through(moments);
        float[][] planes = new float[bands.length][pointing.width() * pointing.height()];
        IntStream.range(0, pointing.height())
                .parallel()
                .forEach(y -> glowRow(target.glow(), pointing, bands, planes, y, perPixel * through));
        Shape middle = optics.shape(pointing.width() / 2.0, pointing.height() / 2.0, moments);
        for (float[] plane : planes) {
            Blur.gaussian(plane, pointing.width(), pointing.height(), middle.fwhmPx() / 2.3548);
        }
        double[] sky = new double[bands.length];
        for (int p = 0; p < bands.length; p++) {
            sky[p] = perPixel * Glow.brightness(entry.sky()) * bands[p].sky();
        }
        double faint = 0.02 * Math.sqrt(least(sky) * Math.max(60, entry.seconds())) / Math.max(60, entry.seconds());
        StarPainter painter = new StarPainter(planes, pointing.width(), pointing.height(), faint);
        for (CatalogueStar star : target.stars()) {
            paint(painter, star, optics, bands, moments, rig.zeroPointEPerS() * through);
        }
        Scene scene = new Scene(planes, sky, pointing.width(), pointing.height());
        scene.addSky(entry, moments);
        return scene;
    }

    private static void glowRow(Glow glow, Pointing p, Passband[] bands, float[][] planes, int y, double scale) {
        double[] light = new double[4];
        for (int x = 0; x < p.width(); x++) {
            Arrays.fill(light, 0);
            glow.addTo(p.east(x, y), p.north(x, y), light);
            for (int b = 0; b < bands.length; b++) {
                planes[b][y * p.width() + x] = (float) (scale * bands[b].of(light));
            }
        }
    }

    private static void paint(
            StarPainter painter,
            CatalogueStar star,
            Optics optics,
            Passband[] bands,
            List<Moment> moments,
            double zero) {
        Pointing pointing = optics.pointing();
        double x = pointing.x(star.eastArcsec(), star.northArcsec());
        double y = pointing.y(star.eastArcsec(), star.northArcsec());
        double margin = star.green() > 1e-4 ? 150 : 25;
        if (x < -margin || y < -margin || x > pointing.width() + margin || y > pointing.height() + margin) {
            return;
        }
        double[] rates = new double[bands.length];
        for (int b = 0; b < bands.length; b++) {
            rates[b] = zero * bands[b].of(star);
        }
        painter.paint(x, y, rates, optics.shape(x, y, moments), optics.rig().spider());
    }

    /**
     * The sky with its gradient, a trace of vignetting left by the flats, cloud that takes and gives back light, a
     * shadow.
     */
    private void addSky(PlannedEntry entry, List<Moment> moments) {
        double angle = StrictMath.toRadians(40.0 + 7 * (entry.slug().length() % 9) + entry.turn());
        double cos = StrictMath.cos(angle) / width;
        double sin = StrictMath.sin(angle) / width;
        double clear = moments.stream().mapToDouble(Moment::clear).average().orElse(1);
        double shadow = moments.stream().mapToDouble(Moment::shadow).average().orElse(0);
        double lit = 1 + (entry.site().equals("terrace") ? 0.35 : 0.05) * (1 - clear);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double dx = x - width / 2.0;
                double dy = y - height / 2.0;
                double slope = 1 + entry.gradient() * (dx * cos + dy * sin);
                double corner = 1 - 0.018 * (dx * dx + dy * dy) / (0.25 * width * width);
                double behind = shadow == 0 ? 1 : 1 - 0.93 * shade(x, y, shadow, entry);
                for (int p = 0; p < planes.length; p++) {
                    int at = y * width + x;
                    planes[p][at] = (float)
                            ((planes[p][at] * behind + skyRate[p] * lit * slope * (0.25 + 0.75 * behind)) * corner);
                }
            }
        }
    }

    private double shade(int x, int y, double share, PlannedEntry entry) {
        double border =
                share * width + 0.12 * width * new Turbulence(entry.slug().hashCode()).fractal(x / 160.0, y / 160.0, 3);
        return Dumbbell.edge(x + 0.25 * (y - height / 2.0), border, 70);
    }

    private static double through(List<Moment> moments) {
        return moments.stream()
                .mapToDouble(m -> m.clear() * StrictMath.pow(10, -0.4 * EXTINCTION * (m.airmass() - 1)))
                .average()
                .orElse(1);
    }

    private static double least(double[] values) {
        double least = values[0];
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }
}
