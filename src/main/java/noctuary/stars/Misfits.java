package noctuary.stars;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Flags single stars that are much wider or longer than the stars around them: close pairs the filter saw as one,
 * galaxies, trails.
 */
final class Misfits {
    private static final int FEWEST = 10;
    private static final double SIGMAS = 4.5;
    /** Deviation in logarithmic width or shear that is always allowed. */
    private static final double ALLOWED = 0.05;

    private Misfits() {}

    static List<MeasuredStar> flag(List<MeasuredStar> stars, int width, int height) {
        List<MeasuredStar> counting =
                stars.stream().filter(MeasuredStar::counts).toList();
        if (counting.size() < FEWEST) {
            return stars;
        }
        Width size = new Width(counting, new FieldBasis(width, height));
        Trend first = new Trend(counting, s -> s.shear().g1(), s -> s.shearError(), width, height);
        Trend second = new Trend(counting, s -> s.shear().g2(), s -> s.shearError(), width, height);
        return stars.stream()
                .map(s -> s.counts() && (size.breaks(s) || first.breaks(s) || second.breaks(s)) ? flagged(s) : s)
                .toList();
    }

    private static MeasuredStar flagged(MeasuredStar measured) {
        Star s = measured.star();
        Set<Star.Flag> flags = EnumSet.of(Star.Flag.BLENDED);
        return new MeasuredStar(
                new Star(
                        s.x(),
                        s.y(),
                        s.flux(),
                        s.fwhmPx(),
                        s.ellipticity(),
                        s.angleDeg(),
                        s.halfFluxRadiusPx(),
                        s.snr(),
                        s.peak(),
                        flags),
                measured.shape());
    }

    /** How wide stars are over the field, close pairs and clumps apart. */
    private static final class Width {
        private final FieldBasis basis;
        private final int terms;
        private final Surface surface;

        Width(List<MeasuredStar> stars, FieldBasis basis) {
            this.basis = basis;
            this.terms = FieldBasis.termsFor(stars.size());
            List<Shape> shapes = stars.stream().map(MeasuredStar::shape).toList();
            surface = Locus.fit(
                    shapes.stream().map(s -> basis.at(s.x(), s.y(), terms)).toArray(double[][]::new),
                    shapes.stream().mapToDouble(Shape::logFwhm).toArray(),
                    shapes.stream().mapToDouble(Shape::logFwhmError).toArray(),
                    FieldModels.ALIKE);
        }

        boolean breaks(MeasuredStar star) {
            Shape shape = star.shape();
            double off = Math.abs(shape.logFwhm() - surface.combined(basis.at(shape.x(), shape.y(), terms)));
            return off > ALLOWED + SIGMAS * Math.hypot(shape.logFwhmError(), Math.sqrt(surface.ownVariance()));
        }
    }

    /** One figure of the stars as a smooth surface, and how far a star may lie off it. */
    private static final class Trend {
        private final ToDoubleFunction<Shape> figure;
        private final ToDoubleFunction<Shape> error;
        private final int width;
        private final int height;
        private final Surface surface;

        Trend(
                List<MeasuredStar> stars,
                ToDoubleFunction<Shape> figure,
                ToDoubleFunction<Shape> error,
                int width,
                int height) {
            this.figure = figure;
            this.error = error;
            this.width = width;
            this.height = height;
            int n = stars.size();
            double[][] columns = new double[4][n];
            IntStream.range(0, n).forEach(i -> {
                Shape shape = stars.get(i).shape();
                columns[0][i] = x(shape);
                columns[1][i] = y(shape);
                columns[2][i] = figure.applyAsDouble(shape);
                columns[3][i] = error.applyAsDouble(shape);
            });
            surface = Surface.fit(columns[0], columns[1], columns[2], columns[3], Surface.termsFor(n));
        }

        boolean breaks(MeasuredStar star) {
            Shape shape = star.shape();
            double off = Math.abs(figure.applyAsDouble(shape) - surface.at(x(shape), y(shape)));
            return off > ALLOWED + SIGMAS * Math.hypot(error.applyAsDouble(shape), Math.sqrt(surface.ownVariance()));
        }

        private double x(Shape shape) {
            return 2 * (shape.x() + 0.5) / width - 1;
        }

        private double y(Shape shape) {
            return 2 * (shape.y() + 0.5) / height - 1;
        }
    }
}
