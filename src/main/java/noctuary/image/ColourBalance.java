package noctuary.image;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import noctuary.image.Stretch.Channel;
import noctuary.stats.Robust;

/**
 * Weighs three channels so that the typical small bright thing is white: what stands out most from its own
 * neighbourhood is nearly always a star, and the mean star is near white, whatever colour the nebula has.
 */
final class ColourBalance {
    private static final double BRIGHT = 0.995;
    private static final double NEARLY_SATURATED = 0.9999;
    private static final double MOST_GAIN = 4;

    private ColourBalance() {}

    static List<Channel> weigh(List<SkyTile> tiles, List<Double> sky) {
        if (sky.size() == 1) {
            return List.of(new Channel(sky.get(0), 1));
        }
        List<double[]> shares = sharesOfStars(tiles, sky.size());
        List<Channel> channels = new ArrayList<>();
        for (int c = 0; c < sky.size(); c++) {
            int channel = c;
            double share = Robust.median(
                    shares.stream().mapToDouble(pixel -> pixel[channel]).toArray());
            double gain = share > 0 ? Math.max(1 / MOST_GAIN, Math.min(MOST_GAIN, 1 / share)) : 1;
            channels.add(new Channel(sky.get(c), gain));
        }
        return channels;
    }

    /** For every pixel of a star, its channels above the tile, as shares of their mean. */
    private static List<double[]> sharesOfStars(List<SkyTile> tiles, int channels) {
        double[] all = tiles.stream()
                .flatMapToDouble(tile -> IntStream.range(0, tile.count()).mapToDouble(tile::standsOut))
                .sorted()
                .toArray();
        double from = Robust.quantileOfSorted(all, BRIGHT);
        double to = Robust.quantileOfSorted(all, NEARLY_SATURATED);
        List<double[]> shares = new ArrayList<>();
        for (SkyTile tile : tiles) {
            for (int i = 0; i < tile.count(); i++) {
                double mean = tile.standsOut(i);
                if (mean > 0 && mean >= from && mean <= to) {
                    shares.add(shares(tile, i, mean, channels));
                }
            }
        }
        return shares;
    }

    private static double[] shares(SkyTile tile, int i, double mean, int channels) {
        double[] shares = new double[channels];
        for (int c = 0; c < channels; c++) {
            shares[c] = (tile.values()[c][i] - tile.level(c)) / mean;
        }
        return shares;
    }
}
