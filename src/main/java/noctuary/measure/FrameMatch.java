package noctuary.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.match.Alignment;
import noctuary.match.Match;
import noctuary.measure.CourseFrame.FieldMove;
import noctuary.measure.DimmedSide.Expected;
import noctuary.stars.Star;
import noctuary.stats.Robust;

/** The same stars in the reference frame and in another. */
public final class FrameMatch {
    private static final int FEWEST_COMMON = 6;
    private static final double SURE_SNR = 20;
    /** A star with less than this share of the light it should have is dimmed. */
    private static final double DIMMED = 0.6;

    private static final double MARGIN_PX = 8;

    private final List<Star> reference;
    private final FrameSheet frame;
    private final List<Star> stars;
    private final Alignment alignment;
    private final Map<Integer, Integer> partner = new HashMap<>();
    private final double[] ratios;

    private FrameMatch(FrameSheet reference, FrameSheet frame, Match match) {
        this.reference = reference.stars();
        this.frame = frame;
        this.stars = frame.stars();
        this.alignment = match.alignment();
        match.pairs().forEach(p -> partner.put(p.from(), p.to()));
        this.ratios = match.pairs().stream()
                .filter(p -> bothMeasured(p.from(), p.to()))
                .mapToDouble(p -> ratio(p.from(), p.to()))
                .toArray();
    }

    /** Absent when the stars do not match; a mirrored field is no match within a night. */
    public static Optional<FrameMatch> of(FrameSheet reference, FrameSheet frame) {
        return Match.find(reference.stars(), frame.stars())
                .filter(m -> !m.alignment().mirrored())
                .map(m -> new FrameMatch(reference, frame, m));
    }

    /** From the reference to the frame. */
    Alignment alignment() {
        return alignment;
    }

    int common() {
        return ratios.length;
    }

    /** Median ratio of flux, this frame over the reference. */
    public OptionalDouble fluxRatio() {
        return common() < FEWEST_COMMON ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(ratios));
    }

    public double fluxRatioError() {
        return Robust.medianError(ratios);
    }

    FieldMove move() {
        double x = (frame.measurement().width() - 1) / 2.0;
        double y = (frame.measurement().height() - 1) / 2.0;
        double[] moved = alignment.apply(x, y);
        Optional<Double> scale = frame.report().imageScale().map(FrameReport.Scale::arcsecPerPx);
        double dx = moved[0] - x;
        double dy = moved[1] - y;
        return new FieldMove(dx, dy, arcsec(dx, scale), arcsec(dy, scale), alignment.rotationDeg());
    }

    /** Bright stars of the reference that lie on this frame and are gone or dimmed, by side. */
    Optional<DimmedSide> dimmed() {
        double share = fluxRatio().orElse(Double.NaN);
        double cx = (frame.measurement().width() - 1) / 2.0;
        double cy = (frame.measurement().height() - 1) / 2.0;
        List<Expected> expected = new ArrayList<>();
        for (int i = 0; i < reference.size(); i++) {
            Star star = reference.get(i);
            double[] at = alignment.apply(star.x(), star.y());
            boolean sure = star.measured() && star.snr() * Math.min(1, share) >= SURE_SNR;
            if (sure && Math.abs(at[0] - cx) < cx - MARGIN_PX && Math.abs(at[1] - cy) < cy - MARGIN_PX) {
                expected.add(new Expected((at[0] - cx) / cx, (at[1] - cy) / cy, lost(i, share)));
            }
        }
        return DimmedSide.of(expected);
    }

    private boolean lost(int i, double share) {
        Integer to = partner.get(i);
        return to == null || bothMeasured(i, to) && ratio(i, to) < DIMMED * share;
    }

    private boolean bothMeasured(int from, int to) {
        return reference.get(from).measured() && stars.get(to).measured();
    }

    private double ratio(int from, int to) {
        return stars.get(to).flux() / reference.get(from).flux();
    }

    private static OptionalDouble arcsec(double px, Optional<Double> scale) {
        return scale.isPresent() ? OptionalDouble.of(px * scale.get()) : OptionalDouble.empty();
    }
}
