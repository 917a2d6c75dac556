package noctuary.image;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import noctuary.image.Stretch.Channel;
import noctuary.stats.Selection;

/**
 * One small square of a preview: the values of each channel and their medians.
 *
 * @param sum of the medians
 * @param values by channel; only the first {@code count} count, those present in every channel
 */
record SkyTile(double[] levels, double sum, float[][] values, int count) {
    private static final int SIDE = 24;

    /** Tiles with any pixels, darkest first. */
    static List<SkyTile> of(List<Plane> planes) {
        List<SkyTile> tiles = new ArrayList<>();
        int width = planes.get(0).width();
        int height = planes.get(0).height();
        for (int y = 0; y == 0 || y + SIDE <= height; y += SIDE) {
            for (int x = 0; x == 0 || x + SIDE <= width; x += SIDE) {
                SkyTile tile = at(planes, x, y, Math.min(SIDE, width), Math.min(SIDE, height));
                if (tile.count > 0) {
                    tiles.add(tile);
                }
            }
        }
        tiles.sort(Comparator.comparingDouble(SkyTile::sum));
        return tiles;
    }

    private static SkyTile at(List<Plane> planes, int fromX, int fromY, int width, int height) {
        float[][] values = new float[planes.size()][width * height];
        int count = 0;
        for (int y = fromY; y < fromY + height; y++) {
            for (int x = fromX; x < fromX + width; x++) {
                boolean whole = true;
                for (int c = 0; c < values.length; c++) {
                    values[c][count] = planes.get(c).at(x, y);
                    whole &= Float.isFinite(values[c][count]);
                }
                count += whole ? 1 : 0;
            }
        }
        double[] levels = new double[values.length];
        double sum = 0;
        for (int c = 0; c < values.length; c++) {
            levels[c] = count == 0 ? 0 : Selection.median(values[c].clone(), count);
            sum += levels[c];
        }
        return new SkyTile(levels, sum, values, count);
    }

    double level(int channel) {
        return levels[channel];
    }

    /** The median of the tile above the sky of the whole, mean of the weighed channels. */
    double aboveSky(List<Channel> channels) {
        double sum = 0;
        for (int c = 0; c < channels.size(); c++) {
            sum += (level(c) - channels.get(c).sky()) * channels.get(c).gain();
        }
        return sum / channels.size();
    }

    /** Sigma of the weighed mean of the channels. */
    double noise(List<Channel> channels) {
        float[] mean = new float[count];
        for (int c = 0; c < channels.size(); c++) {
            for (int i = 0; i < count; i++) {
                mean[i] += (float) ((values[c][i] - level(c)) * channels.get(c).gain() / channels.size());
            }
        }
        return Selection.sigma(mean, count, Selection.median(mean.clone(), count));
    }

    /** The mean over the channels of pixel {@code i} above the tile's own medians. */
    double standsOut(int i) {
        double sum = 0;
        for (int c = 0; c < values.length; c++) {
            sum += values[c][i] - level(c);
        }
        return sum / values.length;
    }
}
