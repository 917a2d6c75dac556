package noctuary.stars;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/**
 * How often the 68 % intervals of centre, corner excess, tilt and curvature cover the truth, over 200 seeds (or as many
 * as the first argument says), with and without one star in five that is wider than its place asks for: they should in
 * 60 to 76 % of frames.
 */
public final class FieldCoverageBench {
    private static final int WIDTH = 700;
    private static final int HEIGHT = 500;
    private static final double R2 = WIDTH * WIDTH + HEIGHT * HEIGHT;

    private FieldCoverageBench() {}

    /** A field: width in the middle, rise to either side, rise to a corner with the square and the fourth power. */
    private record Field(double centre, double slope, double square, double fourth, double wide) implements StarShape {
        @Override
        public At at(double x, double y) {
            double u = 2 * (x + 0.5) / WIDTH - 1;
            double v = 2 * (y + 0.5) / HEIGHT - 1;
            double r2 = (u * u * WIDTH * WIDTH + v * v * HEIGHT * HEIGHT) / R2;
            double stray = chance(x, y, 1) < wide ? 1.05 - 0.3 * Math.log(1 - chance(x, y, 2)) : 1;
            return new At((centre + slope * u + square * r2 + fourth * r2 * r2) * stray, 0.1, 20, 3);
        }

        /** Even in 0 to 1, the same for the same place. */
        private static double chance(double x, double y, int salt) {
            double v = Math.sin(x * 12.9898 + y * 78.233 + salt * 37.719) * 43758.5453;
            return v - Math.floor(v);
        }

        double tilt() {
            return 2 * slope * Math.sqrt(R2) / WIDTH;
        }
    }

    private record Claim(
            String name, double truth, ToDoubleFunction<FieldModel> value, ToDoubleFunction<FieldModel> error) {}

    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        System.out.println("field, stars, share of wide ones: figure: covered %, mean off, scatter, stated");
        for (int stars : new int[] {40, 80, 200}) {
            for (double wide : new double[] {0, 0.2}) {
                run(new Field(2.6, 0.15, 0.2, 0.3, wide), stars, seeds);
                run(new Field(2.6, 0, 0, 0, wide), stars, seeds);
            }
        }
    }

    private static void run(Field field, int stars, int seeds) {
        List<FieldModel> models = IntStream.range(0, seeds)
                .mapToObj(seed -> StarField.measure(
                        new SkySimulator(WIDTH, HEIGHT, 5000 + seed)
                                .shape(field)
                                .stars(stars, 20, 200, 12)
                                .frame()
                                .plane(),
                        StarField.Conditions.PLAIN))
                .flatMap(f -> f.model().stream())
                .toList();
        double bend = field.square + field.fourth;
        print("%s, %d stars, %d frames", field, stars, models.size());
        for (Claim claim : List.of(
                new Claim("centre", field.centre, FieldModel::centreFwhmPx, FieldModel::centreErrorPx),
                new Claim("corner excess", bend, FieldModel::cornerExcessPx, FieldModel::cornerExcessErrorPx),
                new Claim("tilt", field.tilt(), FieldModel::tiltPx, FieldModel::tiltErrorPx),
                new Claim("curvature", bend, FieldModel::curvaturePx, FieldModel::curvatureErrorPx))) {
            line(claim, models);
        }
    }

    private static void line(Claim claim, List<FieldModel> models) {
        List<FieldModel> with = models.stream()
                .filter(m -> Double.isFinite(claim.error.applyAsDouble(m)))
                .toList();
        double[] off = with.stream()
                .mapToDouble(m -> claim.value.applyAsDouble(m) - claim.truth)
                .toArray();
        double[] stated = with.stream().mapToDouble(claim.error).toArray();
        long covered = IntStream.range(0, off.length)
                .filter(i -> Math.abs(off[i]) <= stated[i])
                .count();
        double mean = IntStream.range(0, off.length)
                .mapToDouble(i -> off[i])
                .average()
                .orElse(Double.NaN);
        double square = IntStream.range(0, off.length)
                .mapToDouble(i -> off[i] * off[i])
                .average()
                .orElse(Double.NaN);
        double error = IntStream.range(0, off.length)
                .mapToDouble(i -> stated[i])
                .average()
                .orElse(Double.NaN);
        print(
                "  %-14s %5.1f %%  %+.4f  %.4f  %.4f",
                claim.name, 100.0 * covered / off.length, mean, Math.sqrt(square - mean * mean), error);
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
