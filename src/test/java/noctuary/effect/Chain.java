package noctuary.effect;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The way from a linear plane to a picture: a stretch, and a step before or after it. */
record Chain(Tone tone, Order order, StepRow row, PlantedSky.Seeing seeing) {
    Chain(Tone tone, Order order, StepRow row) {
        this(tone, order, row, PlantedSky.Seeing.USUAL);
    }

    /** A stretch of shares of white and its inverse. */
    record Tone(String name, DoubleUnaryOperator forward, DoubleUnaryOperator back) {
        static final double TOP = 40;

        static Tone asinh() {
            double height = 0.75 / asinh(TOP);
            return new Tone(
                    "asinh",
                    x -> 0.25 + height * asinh(TOP * (x - PlantedSky.LEVEL) / 6000),
                    v -> PlantedSky.LEVEL + 6000 / TOP * Math.sinh((v - 0.25) / height));
        }

        /** ((x - black) / white) to the power of 0.35. */
        static Tone power() {
            double black = PlantedSky.LEVEL - 80;
            return new Tone(
                    "power",
                    x -> Math.pow(Math.max(0, (x - black) / 6000), 0.35),
                    v -> black + 6000 * Math.pow(Math.max(0, v), 1 / 0.35));
        }

        private static double asinh(double u) {
            return Math.signum(u) * Math.log(Math.abs(u) + Math.sqrt(u * u + 1));
        }
    }

    /** Where the step stands; alone: from a stretched version to the next. */
    enum Order {
        BEFORE,
        AFTER,
        ALONE
    }

    /** What a step may know of the plane it works on. */
    record Context(double level, double noise, double floor, List<double[]> stars) {}

    /** A step. */
    interface Step {
        float[] apply(float[] plane, Context context);
    }

    private Context linear(List<double[]> stars) {
        return new Context(PlantedSky.LEVEL, seeing.sigma(), PlantedSky.LEVEL - 8 * seeing.sigma(), stars);
    }

    private Context stretched(List<double[]> stars) {
        double level = tone.forward().applyAsDouble(PlantedSky.LEVEL);
        double noise = (tone.forward().applyAsDouble(PlantedSky.LEVEL + 1)
                        - tone.forward().applyAsDouble(PlantedSky.LEVEL - 1))
                / 2
                * seeing.sigma();
        return new Context(level, noise, level - 8 * noise, stars);
    }

    /** The same with a stretch that does not bend within the noise of the sky. */
    Chain straight() {
        double level = tone.forward().applyAsDouble(PlantedSky.LEVEL);
        double slope = tone.forward().applyAsDouble(PlantedSky.LEVEL + 1) - level;
        Tone straight = new Tone(
                tone.name() + " straight",
                x -> level + slope * (x - PlantedSky.LEVEL),
                v -> PlantedSky.LEVEL + (v - level) / slope);
        return new Chain(straight, order, row, seeing);
    }

    /** The plane that the picture is held against. */
    float[] origin(float[] linear) {
        return order == Order.ALONE ? KeeperSteps.cut(KeeperSteps.each(linear, tone.forward())) : linear;
    }

    /** The picture: shares of white. */
    float[] picture(float[] linear, List<double[]> stars) {
        float[] first = order == Order.BEFORE ? row.step().apply(linear, linear(stars)) : linear;
        float[] shown = KeeperSteps.cut(KeeperSteps.each(first, tone.forward()));
        return KeeperSteps.cut(order == Order.BEFORE ? shown : row.step().apply(shown, stretched(stars)));
    }

    Effect effect(PlantedSky sky) {
        float[] picture = picture(sky.pixels(), sky.stars());
        if (order != Order.ALONE) {
            return sky.effectTo(picture);
        }
        float[] origin = origin(sky.pixels());
        return PlantedSky.effectOfVersion(sky.side(tone.name(), () -> origin), origin, picture);
    }

    /** The picture without the step, or with it where it is a change of tones. */
    float[] plain(float[] linear, List<double[]> stars) {
        return row.tone() ? picture(linear, stars) : KeeperSteps.cut(KeeperSteps.each(linear, tone.forward()));
    }

    /** In the origin's units: the stretch undone. */
    float[] undone(float[] picture) {
        return order == Order.ALONE ? picture : KeeperSteps.each(picture, tone.back());
    }

    double originLevel() {
        return order == Order.ALONE ? tone.forward().applyAsDouble(PlantedSky.LEVEL) : PlantedSky.LEVEL;
    }
}
