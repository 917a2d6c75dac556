package noctuary.fits;

import java.util.Arrays;
import noctuary.image.Plane;

/** Mean, median and extremes of the pixels that are there. */
record PixelSummary(double mean, double median, double lowest, double highest, int missing) {
    static PixelSummary of(FitsImage image) {
        return of(image.planes().toArray(Plane[]::new));
    }

    static PixelSummary of(Plane... planes) {
        int size = planes[0].width() * planes[0].height();
        double[] values = new double[size * planes.length];
        int count = 0;
        for (Plane plane : planes) {
            for (int i = 0; i < size; i++) {
                double value = plane.at(i % plane.width(), i / plane.width());
                if (!Double.isNaN(value)) {
                    values[count++] = value;
                }
            }
        }
        double[] there = Arrays.copyOf(values, count);
        Arrays.sort(there);
        double mean = Arrays.stream(there).average().orElse(Double.NaN);
        double median = count == 0 ? Double.NaN : (there[(count - 1) / 2] + there[count / 2]) / 2;
        return new PixelSummary(
                mean,
                median,
                count == 0 ? Double.NaN : there[0],
                count == 0 ? Double.NaN : there[count - 1],
                values.length - count);
    }
}
