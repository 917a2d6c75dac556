package noctuary.stars;

import java.util.Locale;
import java.util.stream.IntStream;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/**
 * How often the 68 % interval of the median width covers the truth, over 200 seeds (or as many as the first argument
 * says): it should in 60 to 76 % of frames.
 */
public final class CoverageBench {
    private CoverageBench() {}

    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        System.out.println(
                "FWHM    e  beta stars | covered %  bias %  scatter %  stated %  | e bias  beta mean  spread");
        for (double[] row : new double[][] {
            {1.4, 0, 3.5, 80}, {2, 0.2, 2.5, 80}, {3, 0, 3.5, 80}, {4.5, 0.2, 3, 80}, {3, 0.1, 3, 12}
        }) {
            run(row[0], row[1], row[2], (int) row[3], seeds);
        }
    }

    private static void run(double fwhm, double ellipticity, double beta, int stars, int seeds) {
        double[][] answers = IntStream.range(0, seeds)
                .mapToObj(seed -> StarField.measure(
                        new SkySimulator(500, 400, 1000 + seed)
                                .shape(StarShape.constant(fwhm, ellipticity, 30, beta))
                                .stars(stars, 15, 200, 5 * fwhm)
                                .hotPixels(20)
                                .frame()
                                .plane(),
                        StarField.Conditions.PLAIN))
                .filter(f -> f.fwhmPx().isPresent())
                .map(f -> new double[] {
                    100 * (f.fwhmPx().get().median() / fwhm - 1),
                    100 * f.fwhmPx().get().standardError() / fwhm,
                    f.ellipticity().get().median() - ellipticity,
                    f.moffatBeta().getAsDouble()
                })
                .toArray(double[][]::new);
        long covered = IntStream.range(0, answers.length)
                .filter(i -> Math.abs(answers[i][0]) <= answers[i][1])
                .count();
        System.out.printf(
                Locale.ROOT,
                "%4.1f %4.1f %5.1f %5d | %6.1f %+10.3f %10.3f %9.3f | %+.4f %8.3f %8.3f   (%d frames)%n",
                fwhm,
                ellipticity,
                beta,
                stars,
                100.0 * covered / answers.length,
                mean(answers, 0),
                deviation(answers, 0),
                mean(answers, 1),
                mean(answers, 2),
                mean(answers, 3),
                deviation(answers, 3),
                answers.length);
    }

    private static double mean(double[][] rows, int column) {
        return IntStream.range(0, rows.length)
                .mapToDouble(i -> rows[i][column])
                .average()
                .orElse(Double.NaN);
    }

    private static double deviation(double[][] rows, int column) {
        double mean = mean(rows, column);
        return Math.sqrt(IntStream.range(0, rows.length)
                .mapToDouble(i -> (rows[i][column] - mean) * (rows[i][column] - mean))
                .average()
                .orElse(Double.NaN));
    }
}
