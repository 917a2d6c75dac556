package noctuary.measure;

import java.util.List;

/**
 * Noise of means of more and more frames of one entry, laid on each other by their stars and to whole pixels, so that
 * nothing is interpolated. Counts are those of the first frame: every frame is brought to its star light.
 *
 * @param filter as the header writes it; empty for none
 * @param movedPx largest distance by which the pointing moved between two of the frames
 * @param points by number of frames; the last holds all that were combined
 * @param single noise of one frame in its own counts, from the differences between frames alone: no star, no nebula
 *     and nothing else that stays between exposures is in it
 * @param singleError half the spread of what the points say of it
 * @param onSky variance that stays when frames are laid on each other by their stars, over what differs between them
 * @param onSensor the same when they are laid on each other as they came from the sensor
 */
public record NoiseOverTime(
        String filter,
        double movedPx,
        List<Point> points,
        double single,
        double singleError,
        double onSky,
        double onSensor) {
    public NoiseOverTime {
        points = List.copyOf(points);
    }

    /**
     * @param noise of a pixel of the mean
     * @param fresh of that, what differs from frame to frame: half the difference of the means of every other frame
     * @param foretold by the noise of each frame alone, if it averages out
     */
    public record Point(int frames, double seconds, double noise, double fresh, double foretold) {}

    public Point last() {
        return points.get(points.size() - 1);
    }
}
