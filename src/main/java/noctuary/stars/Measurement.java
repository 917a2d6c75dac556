package noctuary.stars;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Plane;

/** The whole way of one plane: sky, shared profile, detection, fits, summaries. */
final class Measurement {
    private static final int CELL_PX = 64;
    private static final int SMALLEST_PX = 16;
    /** Standard error of the width, as a share of it, above which none is given. */
    private static final double MOST_DOUBT = 0.1;

    /** Share of the highest pixel that stands for the noise of a plane that has none, as simulations may. */
    private static final double NOISELESS = 1e-3;

    private static final double SIGMAS = 5.5;
    private static final int MOST_FITS = 1000;

    private final Plane plane;
    private final StarField.Conditions conditions;
    private final Sampling sampling;

    Measurement(Plane plane, StarField.Conditions conditions) {
        this.plane = plane;
        this.conditions = conditions;
        this.sampling = Sampling.of(conditions.mosaic());
    }

    StarField run() {
        BackgroundMesh mesh = BackgroundMesh.of(plane, sampling, CELL_PX);
        Background background = new Background(mesh.level(), mesh.noise(), GradientPercent.of(mesh));
        if (mesh.noise() == 0) {
            mesh = mesh.withNoise(NOISELESS * highest(mesh.level()));
        }
        return run(mesh, background);
    }

    /** The highest pixel above the sky; 0 when none is. */
    private double highest(double sky) {
        double most = 0;
        float[] row = new float[plane.width()];
        for (int y = 0; y < plane.height(); y++) {
            plane.copyRow(0, y, row.length, row, 0);
            for (float v : row) {
                most = v - sky > most && v < Float.MAX_VALUE ? v - sky : most;
            }
        }
        return most;
    }

    private StarField run(BackgroundMesh mesh, Background background) {
        if (Double.isNaN(mesh.level())) {
            return none(background, "No pixel of the plane holds a value.");
        }
        if (Math.min(plane.width(), plane.height()) < SMALLEST_PX) {
            return none(
                    background,
                    "The plane is too small to hold stars: " + plane.width() + " x " + plane.height() + " pixels.");
        }
        if (!(mesh.noise() > 0)) {
            return none(background, "The sky has no noise to measure stars against: most pixels are equal.");
        }
        Optional<Psf> psf = new PsfFinder(plane, sampling, mesh, conditions.saturationAdu()).find();
        return psf.map(p -> measured(mesh, background, p))
                .orElseGet(() -> none(background, "No star stands out enough from the noise to be fitted."));
    }

    private StarField measured(BackgroundMesh mesh, Background background, Psf psf) {
        MatchedFilter filter = MatchedFilter.of(psf.shownFwhm(), sampling);
        PointTest points = new PointTest(sampling, Math.max(1, 0.9 * psf.fwhm()));
        List<Detection> found = new Detector(
                        plane, sampling, mesh, new PeakTest(filter, points, SIGMAS, psf.photonSlope()))
                .find(tile -> true);
        double limit = SaturationLevel.of(plane, mesh, found, conditions.saturationAdu());
        StampCutter cutter = new StampCutter(plane, sampling, mesh, limit);
        List<MeasuredStar> fitted = new StarFitter(
                        cutter, psf, filter, limit, plane.width(), plane.height(), mesh.level())
                .fit(found, MOST_FITS);
        List<MeasuredStar> stars = Misfits.flag(fitted, plane.width(), plane.height());
        List<MeasuredStar> counting =
                stars.stream().filter(MeasuredStar::counts).toList();
        if (counting.isEmpty()) {
            return none(background, stars, "Stars were found, but none whose shape can be trusted.");
        }
        ShapeSummary summary = new ShapeSummary(counting, psf);
        if (summary.fwhm().median() < PsfFinder.NARROWEST_MEASURED) {
            return none(background, "What stands out is narrower than a pixel: no star image can be told from it.");
        }
        if (summary.fwhm().standardError() > MOST_DOUBT * summary.fwhm().median()) {
            return none(background, stars, "The few stars found do not agree about their width.");
        }
        return new StarField(
                background,
                byFlux(stars),
                saturated(stars),
                Optional.of(summary.fwhm()),
                Optional.of(new EllipticityField(counting, plane.width(), plane.height()).summary()),
                Optional.of(summary.halfFluxRadius()),
                OptionalDouble.of(psf.profile().beta()),
                ZoneGrid.of(counting, plane.width(), plane.height()),
                FieldModels.of(counting, plane.width(), plane.height(), psf.sharedError()),
                Optional.empty());
    }

    private static List<Star> byFlux(List<MeasuredStar> stars) {
        return stars.stream()
                .map(MeasuredStar::star)
                .sorted(Comparator.comparingDouble(Star::flux)
                        .reversed()
                        .thenComparingDouble(Star::y)
                        .thenComparingDouble(Star::x))
                .toList();
    }

    private static int saturated(List<MeasuredStar> stars) {
        return (int) stars.stream()
                .filter(s -> s.star().flags().contains(Star.Flag.SATURATED))
                .count();
    }

    private StarField none(Background background, String why) {
        return none(background, List.of(), why);
    }

    private StarField none(Background background, List<MeasuredStar> stars, String why) {
        return new StarField(
                background,
                byFlux(stars),
                saturated(stars),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                ZoneGrid.of(List.of(), plane.width(), plane.height()),
                Optional.empty(),
                Optional.of(why));
    }
}
