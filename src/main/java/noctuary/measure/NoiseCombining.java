package noctuary.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.fits.Cited;
import noctuary.fits.FitsFile;
import noctuary.fits.FrameHeader;
import noctuary.fits.UnreadableException;
import noctuary.image.Mosaic;
import noctuary.image.Plane;
import noctuary.stats.Robust;

/** Combines frames one after the other and looks at the noise whenever their number has doubled. */
final class NoiseCombining {
    /** Raised whenever the same pixels give other numbers than before. */
    static final String ENGINE = "2";

    private final List<LaidFrame> frames;
    private final FrameStacker onSky;
    private final FrameStacker onSensor;
    private final double[] single;
    private final List<double[]> looks = new ArrayList<>();

    private NoiseCombining(List<LaidFrame> frames) {
        this.frames = frames;
        Measurement first = frames.get(0).sheet().measurement();
        Optional<Mosaic> mosaic = first.header().flatMap(FrameHeader::mosaic).map(Cited::value);
        onSky = new FrameStacker(first.width(), first.height(), mosaic);
        onSensor = new FrameStacker(first.width(), first.height(), mosaic);
        single = frames.stream().mapToDouble(LaidFrame::noise).toArray();
    }

    /** @param frames an even number, four at least, in the order of time, the first laid on itself */
    static Optional<NoiseOverTime> of(List<LaidFrame> frames) {
        return new NoiseCombining(frames).course();
    }

    private Optional<NoiseOverTime> course() {
        int next = 2;
        for (int i = 0; i < frames.size(); i++) {
            LaidFrame frame = frames.get(i);
            Plane plane = plane(frame);
            onSky.add(plane, frame.to(), frame.level(), frame.light());
            onSensor.add(plane, Optional.empty(), frame.level(), frame.light());
            if (i + 1 == next || i + 1 == frames.size()) {
                looks.add(new double[] {i + 1, onSky.noise(), onSky.fresh()});
                next *= 2;
            }
        }
        double[] last = looks.get(looks.size() - 1);
        boolean whole = looks.stream().allMatch(l -> l[1] > 0 && l[2] > 0);
        return whole ? Optional.of(course(last[2], onSensor.noise())) : Optional.empty();
    }

    private static Plane plane(LaidFrame frame) {
        try {
            return FitsFile.read(frame.sheet().path()).planes().get(0);
        } catch (UnreadableException e) {
            throw new IllegalStateException(frame.sheet().name() + " could be read a moment ago", e);
        }
    }

    /** What differs between all frames tells the noise of each: their relative sizes are those of their own noise. */
    private NoiseOverTime course(double fresh, double sensor) {
        double unit = fresh / meanNoise(frames.size());
        List<NoiseOverTime.Point> points = new ArrayList<>();
        double seconds = frames.get(0).seconds();
        double spread = 0;
        for (double[] look : looks) {
            int n = (int) look[0];
            double foretold = unit * meanNoise(n);
            points.add(new NoiseOverTime.Point(n, n * seconds, look[1], look[2], foretold));
            spread = Math.max(spread, Math.abs(look[2] / foretold - 1));
        }
        double own = Robust.median(
                frames.stream().mapToDouble(f -> f.noise() * f.light()).toArray());
        double total = points.get(points.size() - 1).noise();
        return new NoiseOverTime(
                frames.get(0).sheet().report().filter().orElse(""),
                moved(),
                points,
                unit * own,
                unit * own * spread,
                excess(total, fresh),
                excess(sensor, fresh));
    }

    private static double excess(double total, double fresh) {
        return Math.max(0, total * total / (fresh * fresh) - 1);
    }

    /** Of the mean of the first n frames, were each as noisy as its own sky is rough. */
    private double meanNoise(int n) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += single[i] * single[i];
        }
        return Math.sqrt(sum) / n;
    }

    private double moved() {
        double largest = 0;
        for (LaidFrame a : frames) {
            for (LaidFrame b : frames) {
                largest = Math.max(largest, Math.hypot(a.shiftX() - b.shiftX(), a.shiftY() - b.shiftY()));
            }
        }
        return largest;
    }
}
