package noctuary.stars;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import noctuary.image.Plane;
import noctuary.stats.Robust;

/** Finds what the stars of a frame share from its best ones: width, beta, elongation, photon noise. */
final class PsfFinder {
    private static final double[] TRIAL_FWHM = {3, 8, 20};
    private static final double NARROWEST_FWHM = 1.1;
    /** Below this width in pixels light falls into one pixel wherever the star is, and shape is lost. */
    static final double NARROWEST_MEASURED = 0.8;

    private static final double LEAST_SNR = 20;
    private static final int MOST_STARS = 120;
    private static final int SAMPLE_TILES = 10;
    private static final double FIRST_BETA = 3;
    private static final double FLATTEST = 0.72;
    private static final double STEEPEST = 0.08;
    /** Share of the information on beta of a bright star that another must have to be asked. */
    private static final double FAINT_SHARE = 0.05;

    private static final int FEWEST_FOR_LOCUS = 8;
    /** Spread of logarithmic width beyond what fields of bad optics have. */
    private static final double MOST_SPREAD = 0.25;
    /** Difference of 1 / beta within which the start of its fit takes stars for alike. */
    private static final double ALIKE = 0.01;

    private final Plane plane;
    private final Sampling sampling;
    private final BackgroundMesh mesh;
    private final OptionalDouble saturation;

    PsfFinder(Plane plane, Sampling sampling, BackgroundMesh mesh, OptionalDouble saturation) {
        this.plane = plane;
        this.sampling = sampling;
        this.mesh = mesh;
        this.saturation = saturation;
    }

    Optional<Psf> find() {
        for (double fwhm : TRIAL_FWHM) {
            List<Candidate> stars = trial(fwhm);
            if (!stars.isEmpty()) {
                double width = typicalFwhm(stars);
                if (width < 2.2 * fwhm) {
                    return refine(stars, width);
                }
            }
        }
        return Optional.empty();
    }

    private List<Candidate> trial(double fwhm) {
        MatchedFilter filter = MatchedFilter.of(fwhm, sampling);
        PointTest points = new PointTest(sampling, NARROWEST_FWHM);
        Detector detector = new Detector(plane, sampling, mesh, new PeakTest(filter, points, LEAST_SNR / 2, 0));
        int step = Math.max(1, detector.tiles() / SAMPLE_TILES);
        List<Candidate> stars = fitted(detector.find(tile -> tile % step == step / 2), fwhm);
        return step > 1 && stars.size() < MOST_STARS / 2 ? fitted(detector.find(tile -> true), fwhm) : stars;
    }

    private List<Candidate> fitted(List<Detection> found, double fwhm) {
        double limit = SaturationLevel.of(plane, mesh, found, saturation);
        StampCutter cutter = new StampCutter(plane, sampling, mesh, limit);
        double apart = 3 * fwhm;
        List<Detection> usable = found.stream()
                .filter(d -> d.peak() + mesh.level() < limit && alone(d, found, apart))
                .limit(2 * MOST_STARS)
                .toList();
        int step = Math.max(1, usable.size() / MOST_STARS);
        Moffat profile = new Moffat(FIRST_BETA);
        return IntStream.range(0, usable.size() / step)
                .parallel()
                .mapToObj(i -> {
                    Detection d = usable.get(i * step);
                    double flux = 4 * d.response() * fwhm * fwhm;
                    double[] start = {flux, d.centreX() - d.x(), d.centreY() - d.y(), Math.log(fwhm), 0, 0, 0};
                    return new Candidate(d, cutter.cut(d.x(), d.y(), 2.5 * fwhm + 2, flux), start).fit(profile, 0);
                })
                .filter(PsfFinder::sound)
                .toList();
    }

    private static boolean alone(Detection d, List<Detection> found, double apart) {
        for (Detection other : found) {
            double dx = other.x() - (double) d.x();
            double dy = other.y() - (double) d.y();
            double square = dx * dx + dy * dy;
            if (square > 0 && square < apart * apart && other.response() > 0.03 * d.response()) {
                return false;
            }
        }
        return true;
    }

    private static boolean sound(Candidate c) {
        Shape s = c.shape();
        return s.converged()
                && s.fwhm() > NARROWEST_MEASURED
                && s.logFwhmError() < 0.25
                && s.shear().length() < 0.8
                && Math.hypot(s.x() - c.detection().x(), s.y() - c.detection().y()) < 2 + 0.5 * s.fwhm();
    }

    private static double typicalFwhm(List<Candidate> stars) {
        return Math.exp(bulk(stars)[0]);
    }

    /**
     * Logarithmic width that most stars have, and their spread. Where widths differ by more than the optics make them
     * differ, most of what was found is no star, and stars are the narrow ones.
     */
    private static double[] bulk(List<Candidate> stars) {
        double[] widths = stars.stream().mapToDouble(c -> c.shape().logFwhm()).toArray();
        double spread = Math.max(0.05, Robust.sigma(widths));
        if (spread < MOST_SPREAD || widths.length < FEWEST_FOR_LOCUS) {
            return new double[] {Robust.median(widths), spread};
        }
        double[] error =
                stars.stream().mapToDouble(c -> c.shape().logFwhmError()).toArray();
        Surface locus = Locus.fit(constant(widths.length), widths, error, FieldModels.ALIKE);
        return new double[] {locus.coefficient()[0], Math.max(0.05, Math.sqrt(locus.ownVariance()))};
    }

    private static double[][] constant(int n) {
        double[][] basis = new double[n][];
        Arrays.fill(basis, new double[] {1});
        return basis;
    }

    private Optional<Psf> refine(List<Candidate> first, double width) {
        List<Detection> found = first.stream().map(Candidate::detection).toList();
        double limit = SaturationLevel.of(plane, mesh, found, saturation);
        StampCutter cutter = new StampCutter(plane, sampling, mesh, limit);
        List<Candidate> stars = typical(first).stream()
                .map(c -> {
                    Detection d = c.detection();
                    Shape s = c.shape();
                    double[] start = {
                        s.flux(),
                        s.x() - d.x(),
                        s.y() - d.y(),
                        Math.log(width),
                        s.shear().g1(),
                        s.shear().g2(),
                        0
                    };
                    return new Candidate(d, cutter.cut(d.x(), d.y(), 2.5 * width + 2, s.flux()), start);
                })
                .toList();
        double u = 1 / FIRST_BETA;
        double error = Double.NaN;
        double photons = 0;
        for (int pass = 0; pass < 6; pass++) {
            ProfileSlope.Profiles profiles = ProfileSlope.Profiles.of(u);
            double slope = photons;
            stars = stars.parallelStream()
                    .map(c -> c.fitWithSlope(profiles, slope))
                    .filter(PsfFinder::sound)
                    .toList();
            if (stars.isEmpty()) {
                return Optional.empty();
            }
            stars = typical(stars);
            photons = photonSlope(stars);
            double[] pull = pull(stars);
            double next = Math.max(STEEPEST, Math.min(FLATTEST, u + pull[0]));
            error = pull[1];
            boolean still = pass > 0 && Math.abs(next - u) < 0.3 * error;
            u = next;
            if (still) {
                break;
            }
        }
        double logFwhm = Robust.median(
                stars.stream().mapToDouble(c -> c.shape().logFwhm()).toArray());
        double follows = Robust.median(stars.stream()
                .mapToDouble(c -> c.slope().logFwhmByInverseBeta())
                .toArray());
        return Optional.of(new Psf(new Moffat(1 / u), error, follows, logFwhm, medianShear(stars), photons));
    }

    /** Those whose width lies with the others'. */
    private static List<Candidate> typical(List<Candidate> stars) {
        double[] bulk = bulk(stars);
        return stars.stream()
                .filter(c -> Math.abs(c.shape().logFwhm() - bulk[0]) <= 3.5 * bulk[1])
                .toList();
    }

    private static double photonSlope(List<Candidate> stars) {
        double excess = 0;
        double squared = 0;
        for (Candidate c : stars) {
            excess += c.slope().excessByLight();
            squared += c.slope().lightSquared();
        }
        return squared > 0 ? Math.max(0, excess / squared) : 0;
    }

    /**
     * Step of 1 / beta that the stars together ask for, and its standard error. Faint stars are left out: each would
     * bring the bias of its own fitted width, and hardly any information. Companions and nebula only ever lift the wings.
     */
    private static double[] pull(List<Candidate> stars) {
        double[] known = stars.stream().mapToDouble(c -> c.slope().curvature()).toArray();
        double least = Math.max(1e-9, FAINT_SHARE * Robust.quantile(known, 0.9));
        List<ProfileSlope> bright = stars.stream()
                .map(Candidate::slope)
                .filter(s -> s.curvature() >= least)
                .toList();
        if (bright.isEmpty()) {
            return new double[] {0, Double.NaN};
        }
        double[] step =
                bright.stream().mapToDouble(s -> s.gradient() / s.curvature()).toArray();
        double[] error =
                bright.stream().mapToDouble(s -> 1 / Math.sqrt(s.curvature())).toArray();
        double[] nowhere = new double[step.length];
        Surface mean = step.length < FEWEST_FOR_LOCUS
                ? Surface.fit(nowhere, nowhere, step, error, 1)
                : Locus.fit(constant(step.length), step, error, ALIKE);
        return new double[] {mean.coefficient()[0], Math.sqrt(mean.covariance()[0])};
    }

    private static Shear medianShear(List<Candidate> stars) {
        return new Shear(
                Robust.median(
                        stars.stream().mapToDouble(c -> c.shape().shear().g1()).toArray()),
                Robust.median(
                        stars.stream().mapToDouble(c -> c.shape().shear().g2()).toArray()));
    }
}
