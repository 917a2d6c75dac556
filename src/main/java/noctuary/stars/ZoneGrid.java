package noctuary.stars;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The 3 x 3 grid over the field. */
final class ZoneGrid {
    private static final int SIDE = 3;
    private static final int FEWEST = 3;

    private ZoneGrid() {}

    static List<Zone> of(List<MeasuredStar> stars, int width, int height) {
        List<Zone> zones = new ArrayList<>();
        for (int row = 0; row < SIDE; row++) {
            for (int column = 0; column < SIDE; column++) {
                int r = row;
                int c = column;
                zones.add(zone(
                        row,
                        column,
                        stars.stream()
                                .filter(s -> index(s.star().x(), width) == c
                                        && index(s.star().y(), height) == r)
                                .toList()));
            }
        }
        return zones;
    }

    private static int index(double position, int length) {
        return (int) Math.max(0, Math.min(SIDE - 1, Math.floor((position + 0.5) * SIDE / length)));
    }

    private static Zone zone(int row, int column, List<MeasuredStar> stars) {
        int n = stars.size();
        if (n < FEWEST) {
            return new Zone(row, column, n, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        }
        double[] width = new double[n];
        double[] widthError = new double[n];
        double[] g1 = new double[n];
        double[] g2 = new double[n];
        double[] error = new double[n];
        for (int i = 0; i < n; i++) {
            Shape s = stars.get(i).shape();
            width[i] = s.fwhm();
            widthError[i] = s.logFwhmError() * s.fwhm();
            g1[i] = s.shear().g1();
            g2[i] = s.shear().g2();
            error[i] = s.shearError();
        }
        double[] nowhere = new double[n];
        Surface first = Surface.fit(nowhere, nowhere, g1, error, 1);
        Surface second = Surface.fit(nowhere, nowhere, g2, error, 1);
        Shear mean = new Shear(first.coefficient()[0], second.coefficient()[0]);
        double noise = first.covariance()[0] + second.covariance()[0];
        double length = Math.sqrt(Math.max(0, mean.length() * mean.length() - noise));
        return new Zone(
                row,
                column,
                n,
                OptionalDouble.of(WeightedMedian.of(width, widthError).value()),
                OptionalDouble.of(Shear.ellipticity(length)),
                OptionalDouble.of(mean.angleDeg()));
    }
}
