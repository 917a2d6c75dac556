package noctuary.measure;

import java.util.List;
import java.util.Optional;
import noctuary.match.Alignment;
import noctuary.match.Match;
import noctuary.stars.Star;

/**
 * How much larger one file shows the stars that it has in common with another.
 *
 * @param ratio pixels of the one per pixel of the other
 * @param error standard error from the scatter of the stars about the transform; distortion that all share is not in it
 * @param stars in common
 */
public record ScaleRatio(double ratio, double error, int stars) {

    /** Absent when the stars do not match. */
    public static Optional<ScaleRatio> of(FrameSheet one, FrameSheet other) {
        List<Star> there = other.stars();
        return Match.find(there, one.stars()).map(m -> of(m, there));
    }

    /** Of a similarity fitted to N pairs the scale has the variance s² / Σ r², with s² = rms² / 2 along each axis. */
    private static ScaleRatio of(Match match, List<Star> there) {
        Alignment a = match.alignment();
        double[] x =
                match.pairs().stream().mapToDouble(p -> there.get(p.from()).x()).toArray();
        double[] y =
                match.pairs().stream().mapToDouble(p -> there.get(p.from()).y()).toArray();
        return new ScaleRatio(a.scale(), a.rmsPx() / Math.sqrt(2 * (squares(x) + squares(y))), x.length);
    }

    private static double squares(double[] values) {
        double sum = 0;
        double square = 0;
        for (double value : values) {
            sum += value;
            square += value * value;
        }
        return square - sum * sum / values.length;
    }
}
