package noctuary.image;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/**
 * How linear planes become a picture: every channel loses its sky, is weighed so that the stars come out white on the
 * whole, and is given {@code pedestal} so that the sky ends at a dark grey; then the asinh curve of Lupton et al. 2004.
 * One stretch applied to two images makes them comparable.
 *
 * @param channels one or three
 * @param pedestal distance of the sky from black, in the units of the weighed planes
 * @param softening where the curve turns from straight to logarithmic, same units
 * @param white what becomes 1, counted from black, same units
 * @param noise of the sky in the mean of the channels, same units
 */
public record Stretch(List<Channel> channels, double pedestal, double softening, double white, double noise) {
    /** The largest channel counts for most, so that a one-coloured nebula keeps its detail. */
    private static final double MEAN_SHARE = 0.25;

    /** Shares of the colour that are kept in mere sky, and in light; chosen by eye. */
    private static final double COLOUR_IN_SKY = 0.3;

    private static final double COLOUR_IN_LIGHT = 0.75;
    /** Light that stands this many sigmas above the sky has half of what light gains over sky. */
    private static final double LIGHT_SIGMAS = 3;

    public Stretch {
        channels = List.copyOf(channels);
    }

    /**
     * @param sky level to subtract
     * @param gain to multiply by, after that
     */
    public record Channel(double sky, double gain) {}

    /** Fitted to one or three linear planes of the size in which they are shown. */
    public static Stretch of(List<Plane> planes) {
        return new StretchFit(planes).fit();
    }

    /**
     * One stretch for several images of the same sky: each loses its own background, its light is brought to the
     * first's, and all get the same background grey, white and curve. Grey level and white are the medians of their own.
     *
     * @param own fitted to each image by itself
     * @param lights what the values above the background of each are multiplied by to be the first's, in the units of
     *     the middle channel
     */
    public static List<Stretch> alike(List<Stretch> own, double[] lights) {
        double[] factors = new double[lights.length];
        double[] pedestals = new double[lights.length];
        double[] whites = new double[lights.length];
        for (int i = 0; i < lights.length; i++) {
            Stretch each = own.get(i);
            factors[i] = lights[i] / each.channels.get(each.channels.size() / 2).gain();
            pedestals[i] = each.pedestal * factors[i];
            whites[i] = each.white * factors[i];
        }
        double pedestal = Robust.median(pedestals);
        double white = Math.max(Robust.median(whites), 2 * pedestal);
        double softening = StretchFit.softening(pedestal, white);
        return IntStream.range(0, lights.length)
                .mapToObj(i -> own.get(i).times(factors[i]).with(pedestal, softening, white))
                .toList();
    }

    private Stretch times(double factor) {
        List<Channel> brighter = channels.stream()
                .map(c -> new Channel(c.sky(), c.gain() * factor))
                .toList();
        return new Stretch(brighter, pedestal * factor, softening * factor, white * factor, noise * factor);
    }

    private Stretch with(double otherPedestal, double otherSoftening, double otherWhite) {
        return new Stretch(channels, otherPedestal, otherSoftening, otherWhite, noise);
    }

    /** The planes as display values from 0 to 1, black where missing. */
    public List<Plane> apply(List<Plane> planes) {
        int width = planes.get(0).width();
        int height = planes.get(0).height();
        List<float[]> shown = new ArrayList<>();
        planes.forEach(plane -> shown.add(new float[width * height]));
        IntStream.range(0, height).parallel().forEach(y -> applyRow(planes, y, shown));
        return shown.stream().map(pixels -> Plane.of(width, height, pixels)).toList();
    }

    private void applyRow(List<Plane> planes, int y, List<float[]> shown) {
        int width = planes.get(0).width();
        float[] pixel = new float[planes.size()];
        for (int x = 0; x < width; x++) {
            for (int c = 0; c < pixel.length; c++) {
                pixel[c] = planes.get(c).at(x, y);
            }
            tone(pixel);
            for (int c = 0; c < pixel.length; c++) {
                shown.get(c)[y * width + x] = pixel[c];
            }
        }
    }

    /** Turns the linear values of one pixel, one for each channel, into display values from 0 to 1, in place. */
    public void tone(float[] pixel) {
        double mean = 0;
        for (int c = 0; c < pixel.length; c++) {
            pixel[c] = (float)
                    ((pixel[c] - channels.get(c).sky()) * channels.get(c).gain());
            mean += pixel[c] / pixel.length;
        }
        if (pixel.length == 1) {
            pixel[0] = grey(mean);
            return;
        }
        double saturation = saturation(mean);
        for (int c = 0; c < pixel.length; c++) {
            pixel[c] = (float) (mean + pedestal + saturation * (pixel[c] - mean));
        }
        Asinh.colour(pixel, MEAN_SHARE, softening, white);
    }

    private float grey(double aboveSky) {
        double value = Asinh.normalised((aboveSky + pedestal) / white, softening / white);
        return value >= 0 ? (float) Math.min(1, value) : 0;
    }

    /**
     * Colour is noise where there is only sky: it is held back there, less so where there is light, and
     * left out where a saturated core would show the colour of its own clipping.
     */
    private double saturation(double aboveSky) {
        double light = Math.max(0, aboveSky / noise / LIGHT_SIGMAS);
        double core = Math.max(0, aboveSky / (2 * white));
        double risen = light * light / (light * light + 1);
        return (COLOUR_IN_SKY + (COLOUR_IN_LIGHT - COLOUR_IN_SKY) * risen) / (1 + core * core);
    }
}
