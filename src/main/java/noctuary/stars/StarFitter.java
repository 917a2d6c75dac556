package noctuary.stars;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Fits each chosen detection with the frame's profile, its neighbours' light taken off, and flags what cannot count. */
final class StarFitter {
    private static final double FAINTEST_SNR = 15;
    /** Radius over the usual one where the sky has structure, so that it tells itself from the star's wings. */
    private static final double WIDER = 1.5;
    /** How often sky and star are fitted after one another there. */
    private static final int ROUNDS = 3;

    /** Share of a star's core light that neighbours may add before its shape no longer counts. */
    private static final double MOST_ALIEN = 0.15;

    private final StampCutter cutter;
    private final Psf psf;
    private final double limit;
    private final int width;
    private final int height;
    private final double skyLevel;
    private final double unitResponse;

    StarFitter(StampCutter cutter, Psf psf, MatchedFilter filter, double limit, int width, int height, double sky) {
        this.cutter = cutter;
        this.psf = psf;
        this.limit = limit;
        this.width = width;
        this.height = height;
        this.skyLevel = sky;
        this.unitResponse = filter.response(psf.model(1, 0, 0));
    }

    /** All detections that hold as stars, in the order given; those chosen carry shapes. */
    List<MeasuredStar> fit(List<Detection> detections, int most) {
        Neighbours neighbours = new Neighbours(detections, width, height, WIDER * psf.stampRadius() + 2 * psf.fwhm());
        BitSet eligible = new BitSet();
        List<Set<Star.Flag>> flags = new ArrayList<>();
        for (int i = 0; i < detections.size(); i++) {
            Set<Star.Flag> found = flags(i, detections, neighbours);
            flags.add(found);
            eligible.set(i, !found.contains(Star.Flag.SATURATED));
        }
        BitSet chosen = FairSample.choose(detections, eligible, width, height, most);
        return IntStream.range(0, detections.size())
                .parallel()
                .mapToObj(i -> chosen.get(i)
                        ? fitted(i, detections, neighbours, flags.get(i))
                        : Optional.of(unfitted(detections.get(i), flags.get(i))))
                .flatMap(Optional::stream)
                .toList();
    }

    private Set<Star.Flag> flags(int i, List<Detection> detections, Neighbours neighbours) {
        Detection d = detections.get(i);
        Set<Star.Flag> flags = EnumSet.noneOf(Star.Flag.class);
        double reach = 1.2 * psf.fwhm();
        if (d.centreX() < reach - 0.5
                || d.centreY() < reach - 0.5
                || d.centreX() > width - 0.5 - reach
                || d.centreY() > height - 0.5 - reach) {
            flags.add(Star.Flag.EDGE);
        }
        if (d.peak() + skyLevel >= limit) {
            flags.add(Star.Flag.SATURATED);
        }
        if (d.snr() < FAINTEST_SNR) {
            flags.add(Star.Flag.FAINT);
        }
        if (alien(i, detections, neighbours) > MOST_ALIEN) {
            flags.add(Star.Flag.BLENDED);
        }
        return flags;
    }

    /** Neighbours' light at this star's place over its own. */
    private double alien(int i, List<Detection> detections, Neighbours neighbours) {
        Detection d = detections.get(i);
        MoffatModel own = psf.model(1, 0, 0);
        double[] sum = {0};
        neighbours.forEachNear(i, psf.stampRadius(), j -> {
            Detection other = detections.get(j);
            double dx = other.centreX() - d.centreX();
            double dy = other.centreY() - d.centreY();
            double distance = Math.max(1e-6, Math.hypot(dx, dy));
            double towards = Math.max(0, 1 - 0.5 * psf.shownFwhm() / distance);
            sum[0] += other.response() * own.value(dx * towards, dy * towards);
        });
        return sum[0] / (d.response() * own.value(0.5 * psf.shownFwhm(), 0));
    }

    private Optional<MeasuredStar> fitted(
            int i, List<Detection> detections, Neighbours neighbours, Set<Star.Flag> flags) {
        Detection d = detections.get(i);
        Shape shape = shape(i, detections, neighbours);
        boolean faint = d.snr() < FAINTEST_SNR;
        double moved = Math.hypot(shape.x() - d.centreX(), shape.y() - d.centreY());
        if (!shape.converged() || moved > 1 + 0.3 * psf.fwhm() && !flags.contains(Star.Flag.EDGE)) {
            return faint ? Optional.empty() : Optional.of(bad(d, flags));
        }
        double off = shape.logFwhm() - psf.logFwhm();
        double doubt = 4 * shape.logFwhmError();
        boolean alone = flags.isEmpty() || flags.equals(Set.of(Star.Flag.FAINT));
        if (alone && (off < -0.5 - doubt || off > 0.7 + doubt || stretched(shape))) {
            return Optional.empty();
        }
        if (shape.chiSquare() > 3 + Math.pow(0.05 * d.snr(), 2) || Math.abs(off) > 0.5 + doubt) {
            return Optional.of(bad(d, flags));
        }
        return Optional.of(new MeasuredStar(star(d, shape, flags), shape));
    }

    private Shape shape(int i, List<Detection> detections, Neighbours neighbours) {
        Detection d = detections.get(i);
        boolean structured = cutter.structured(d.x(), d.y());
        double radius = (structured ? WIDER : 1) * psf.stampRadius();
        Stamp stamp = cutter.cut(d.x(), d.y(), radius, d.response() / unitResponse);
        neighbours.forEachNear(i, radius + 2 * psf.fwhm(), j -> takeOff(stamp, detections.get(j)));
        double[] start = psf.parameters(d.response() / unitResponse, d.centreX() - d.x(), d.centreY() - d.y());
        Stamp clean = stamp.cleaned(psf.model(start[0], start[1], start[2]), start[1], start[2], psf.shownFwhm());
        Candidate star = new Candidate(d, clean, start).fit(psf.profile(), psf.photonSlope());
        for (int round = 0; structured && round < ROUNDS && star.shape().converged(); round++) {
            Stamp level = LocalSky.off(clean, star.model(psf.profile()), psf.photonSlope());
            star = new Candidate(d, level, star.parameters()).fit(psf.profile(), psf.photonSlope());
        }
        return star.shape();
    }

    private boolean stretched(Shape shape) {
        double g1 = shape.shear().g1() - psf.shear().g1();
        double g2 = shape.shear().g2() - psf.shear().g2();
        return Math.hypot(g1, g2) > 0.4 + 4 * shape.shearError();
    }

    private void takeOff(Stamp stamp, Detection other) {
        MoffatModel model =
                psf.model(other.response() / unitResponse, other.centreX() - stamp.x(), other.centreY() - stamp.y());
        for (int k = 0; k < stamp.n(); k++) {
            stamp.value()[k] -= model.value(stamp.dx()[k], stamp.dy()[k]);
        }
    }

    private Star star(Detection d, Shape s, Set<Star.Flag> flags) {
        return new Star(
                s.x(),
                s.y(),
                s.flux(),
                s.fwhm(),
                s.shear().ellipticity(),
                s.shear().angleDeg(),
                s.fwhm() * psf.profile().halfFluxOverFwhm(),
                s.flux() / s.fluxError(),
                d.peak(),
                flags);
    }

    private MeasuredStar bad(Detection d, Set<Star.Flag> flags) {
        Set<Star.Flag> all = EnumSet.of(Star.Flag.BAD_FIT);
        all.addAll(flags);
        return unfitted(d, all);
    }

    private MeasuredStar unfitted(Detection d, Set<Star.Flag> flags) {
        double none = Double.NaN;
        Star star = new Star(
                d.centreX(),
                d.centreY(),
                d.response() / unitResponse,
                none,
                none,
                none,
                none,
                d.snr(),
                d.peak(),
                flags);
        return new MeasuredStar(star, null);
    }
}
