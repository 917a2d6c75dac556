package noctuary.stars.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import noctuary.image.Mosaic;
import noctuary.image.Plane;

/**
 * Makes frames with known content: sky, stars as pixel-integrated Moffat profiles, Poisson and read noise, hot pixels,
 * 16-bit rounding and saturation. The same settings and seed give the same frame.
 */
public final class SkySimulator {
    private final int width;
    private final int height;
    private final Dice dice;
    private double skyElectrons = 100;
    private double readNoiseElectrons = 5;
    private double gain = 1;
    private double pedestalAdu = 500;
    private double saturationAdu = 65535;
    private int hotPixels;
    private DoubleBinaryOperator glow = (x, y) -> 0;
    private StarShape shape = StarShape.constant(3, 0, 0, 3.5);
    private DoubleBinaryOperator filterShare = (x, y) -> 1;
    private final List<PlantedStar> stars = new ArrayList<>();

    public SkySimulator(int width, int height, long seed) {
        this.width = width;
        this.height = height;
        this.dice = new Dice(seed);
    }

    public SkySimulator sky(double electrons) {
        this.skyElectrons = electrons;
        return this;
    }

    public SkySimulator camera(double gainElectronsPerAdu, double readNoise, double pedestal, double saturation) {
        this.gain = gainElectronsPerAdu;
        this.readNoiseElectrons = readNoise;
        this.pedestalAdu = pedestal;
        this.saturationAdu = saturation;
        return this;
    }

    public SkySimulator hotPixels(int count) {
        this.hotPixels = count;
        return this;
    }

    /** Light on top of the sky, electrons a pixel at (x, y): a gradient, a nebula. */
    public SkySimulator glow(DoubleBinaryOperator electrons) {
        this.glow = electrons;
        return this;
    }

    /** Puts a colour mosaic before the pixels: green passes all of the light, red and blue these shares. */
    public SkySimulator mosaic(Mosaic mosaic, double red, double blue) {
        this.filterShare = (x, y) -> switch (mosaic.filterAt((int) x, (int) y)) {
            case 'R' -> red;
            case 'B' -> blue;
            default -> 1;
        };
        return this;
    }

    public SkySimulator shape(StarShape starShape) {
        this.shape = starShape;
        return this;
    }

    /** Plants a star of known signal-to-noise ratio. */
    public SkySimulator star(double x, double y, double snr) {
        StarShape.At at = shape.at(x, y);
        MoffatStamp stamp = new MoffatStamp(at.fwhmPx(), at.ellipticity(), at.angleDeg(), at.beta());
        double background = skyElectrons + glow.applyAsDouble(x, y) + readNoiseElectrons * readNoiseElectrons;
        double flux = SignalToNoise.flux(stamp, at.fwhmPx(), background, snr);
        stars.add(new PlantedStar(x, y, flux, at.fwhmPx(), at.ellipticity(), at.angleDeg(), at.beta(), snr));
        return this;
    }

    /** Plants a star of known light, electrons. */
    public SkySimulator light(double x, double y, double electrons) {
        StarShape.At at = shape.at(x, y);
        stars.add(
                new PlantedStar(x, y, electrons, at.fwhmPx(), at.ellipticity(), at.angleDeg(), at.beta(), Double.NaN));
        return this;
    }

    /** Plants stars at random places, log-uniform in signal-to-noise ratio, none closer than {@code apart} pixels. */
    public SkySimulator stars(int count, double leastSnr, double mostSnr, double apart) {
        Spacing spacing = new Spacing(width, height, apart);
        int refused = 0;
        for (int n = 0; n < count && refused < 200 * count; ) {
            double x = dice.uniform(-0.5, width - 0.5);
            double y = dice.uniform(-0.5, height - 0.5);
            if (!spacing.take(x, y)) {
                refused++;
                continue;
            }
            star(x, y, leastSnr * Math.pow(mostSnr / leastSnr, dice.uniform(0, 1)));
            n++;
        }
        return this;
    }

    /** Light without noise, electrons a pixel, row after row. */
    public float[] electrons() {
        float[] light = new float[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                light[y * width + x] = (float) (skyElectrons + glow.applyAsDouble(x, y));
            }
        }
        stars.forEach(star -> paint(star, light));
        for (int i = 0; i < light.length; i++) {
            light[i] *= (float) filterShare.applyAsDouble(i % width, i / width);
        }
        return light;
    }

    /** The frame as a camera would store it, unsigned 16 bit. */
    public SimulatedFrame frame() {
        float[] light = electrons();
        List<int[]> hot = new ArrayList<>();
        short[] stored = new short[light.length];
        for (int i = 0; i < light.length; i++) {
            double electrons = dice.poisson(light[i]) + readNoiseElectrons * dice.normal();
            stored[i] = stored(electrons);
        }
        double noise = Math.sqrt(skyElectrons + readNoiseElectrons * readNoiseElectrons);
        for (int n = 0; n < hotPixels; n++) {
            int x = dice.below(width);
            int y = dice.below(height);
            hot.add(new int[] {x, y});
            double extra = noise * 10 * Math.pow(100, dice.uniform(0, 1));
            stored[y * width + x] = stored(light[y * width + x] + extra);
        }
        return new SimulatedFrame(Plane.ofStored(width, height, stored, 32768, 1), stars, hot);
    }

    private short stored(double electrons) {
        double adu = Math.rint(electrons / gain + pedestalAdu);
        return (short) (Math.max(0, Math.min(Math.min(65535, saturationAdu), adu)) - 32768);
    }

    private void paint(PlantedStar star, float[] light) {
        MoffatStamp stamp = new MoffatStamp(star.fwhmPx(), star.ellipticity(), star.angleDeg(), star.beta());
        double reach = stamp.reach(0.03 / star.fluxElectrons());
        int top = (int) Math.max(0, Math.ceil(star.y() - reach));
        int bottom = (int) Math.min(height - 1, Math.floor(star.y() + reach));
        int left = (int) Math.max(0, Math.ceil(star.x() - reach));
        int right = (int) Math.min(width - 1, Math.floor(star.x() + reach));
        for (int y = top; y <= bottom; y++) {
            for (int x = left; x <= right; x++) {
                light[y * width + x] += (float) (star.fluxElectrons() * stamp.share(x - star.x(), y - star.y()));
            }
        }
    }
}
