package noctuary.image;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import noctuary.image.Stretch.Channel;
import noctuary.stats.Robust;

/** Finds sky, noise, colour balance and range of the planes of one preview. */
final class StretchFit {
    /** Display value of the sky. */
    private static final double SKY_GREY = 0.105;
    /** The sky lies this many sigmas of its noise above black, at least. */
    private static final double PEDESTAL_SIGMAS = 4.5;

    /** And at most this share of the range of brightness over the field, where that is more. */
    private static final double PEDESTAL_SHARE = 0.6;

    private static final double LEAST_WHITE_SIGMAS = 60;
    /** White is the light that only the brightest stars pass, and well above what fills the field. */
    private static final double WHITE_QUANTILE = 0.9985;

    private static final double FIELD_QUANTILE = 0.97;
    private static final double WHITE_OVER_FIELD = 3;

    private final List<Plane> planes;
    private final List<SkyTile> tiles;

    StretchFit(List<Plane> planes) {
        this.planes = planes;
        this.tiles = SkyTile.of(planes);
    }

    Stretch fit() {
        if (tiles.isEmpty()) {
            List<Channel> none = planes.stream().map(plane -> new Channel(0, 1)).toList();
            return new Stretch(none, 1, 1, 1, 1);
        }
        List<SkyTile> sky = darkTiles();
        List<Double> levels = new ArrayList<>();
        for (int c = 0; c < planes.size(); c++) {
            int channel = c;
            levels.add(Robust.median(
                    sky.stream().mapToDouble(tile -> tile.level(channel)).toArray()));
        }
        List<Channel> channels = ColourBalance.weigh(tiles, levels);
        double noise = noise(sky, channels);
        double pedestal = pedestal(noise, channels);
        double white = pedestal + white(noise, intensities(channels));
        return new Stretch(channels, pedestal, softening(pedestal, white), white, noise);
    }

    /** The darker part of the field, without the very darkest, which may be a shaded corner. */
    private List<SkyTile> darkTiles() {
        int size = tiles.size();
        return tiles.subList(size / 8, Math.max(size / 8 + 1, size * 3 / 8));
    }

    private double noise(List<SkyTile> sky, List<Channel> channels) {
        double[] sigmas = sky.stream().mapToDouble(tile -> tile.noise(channels)).toArray();
        double noise = Robust.median(sigmas);
        return noise > 0 ? noise : Math.max(1e-6 * Math.abs(channels.get(0).sky()), Float.MIN_NORMAL);
    }

    /** Far enough for the noise and, within reason, for the darkest parts of a shaded field. */
    private double pedestal(double noise, List<Channel> channels) {
        SkyTile dark = tiles.get(tiles.size() / 50);
        double depth = -1.2 * dark.aboveSky(channels);
        double room = PEDESTAL_SHARE * tiles.get(tiles.size() * 49 / 50).aboveSky(channels);
        return Math.max(PEDESTAL_SIGMAS * noise, Math.min(depth, room));
    }

    private static double white(double noise, double[] sortedLight) {
        double stars = Robust.quantileOfSorted(sortedLight, WHITE_QUANTILE);
        double field = Robust.quantileOfSorted(sortedLight, FIELD_QUANTILE);
        return Math.max(Math.max(stars, WHITE_OVER_FIELD * field), LEAST_WHITE_SIGMAS * noise);
    }

    private double[] intensities(List<Channel> channels) {
        int width = planes.get(0).width();
        int height = planes.get(0).height();
        int step = Math.max(1, (int) Math.sqrt((double) width * height / 250_000));
        double[] light = new double[(height / step + 1) * (width / step + 1)];
        int count = 0;
        for (int y = 0; y < height; y += step) {
            for (int x = 0; x < width; x += step) {
                double mean = 0;
                for (int c = 0; c < channels.size(); c++) {
                    mean += (planes.get(c).at(x, y) - channels.get(c).sky())
                            * channels.get(c).gain();
                }
                if (Double.isFinite(mean)) {
                    light[count++] = mean / channels.size();
                }
            }
        }
        double[] sorted = Arrays.copyOf(light, count);
        Arrays.sort(sorted);
        return sorted;
    }

    /** The softening that puts the sky at its grey, by bisection; a straight line when nothing is bright enough. */
    static double softening(double pedestal, double white) {
        double low = 1e-6 * white;
        double high = 10 * white;
        for (int i = 0; i < 60; i++) {
            double middle = Math.sqrt(low * high);
            if (Asinh.normalised(pedestal / white, middle / white) > SKY_GREY) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
