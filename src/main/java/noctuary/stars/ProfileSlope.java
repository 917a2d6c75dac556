package noctuary.stars;

/**
 * How one fitted star pulls on what all stars share. For u = 1 / beta, with all other parameters following: gradient
 * and curvature of half its chi-square, and the change of its logarithmic width. For the photon noise: sums of model
 * light times excess squared residual, and of light squared, each pixel weighing by its inverse squared variance and
 * freed of the degrees of freedom the fit used up.
 */
record ProfileSlope(
        double gradient, double curvature, double logFwhmByInverseBeta, double excessByLight, double lightSquared) {
    private static final int N = MoffatModel.PARAMETERS;

    static ProfileSlope of(Profiles profiles, Stamp stamp, ShapeFit fit) {
        double[] p = fit.parameters();
        MoffatModel model = model(profiles.middle(), p);
        MoffatModel below = model(profiles.below(), p);
        MoffatModel above = model(profiles.above(), p);
        double[] factor = fit.curvature().clone();
        Cholesky.factor(factor, N);
        double[] slope = new double[N];
        double[] cross = new double[N];
        double[] half = new double[N];
        double gradient = 0;
        double curvature = 0;
        double excess = 0;
        double squared = 0;
        for (int i = 0; i < stamp.n(); i++) {
            double dx = stamp.dx()[i];
            double dy = stamp.dy()[i];
            double w = fit.weights()[i];
            double value = model.value(dx, dy, slope);
            double residual = stamp.value()[i] - value;
            double bySlope = (above.value(dx, dy) - below.value(dx, dy)) / (2 * Profiles.STEP);
            gradient += w * residual * bySlope;
            curvature += w * bySlope * bySlope;
            for (int k = 0; k < N; k++) {
                cross[k] += w * bySlope * slope[k];
            }
            double light = Math.max(0, value - p[6]);
            double free = 1 - leverage(factor, slope, w, half);
            double square = Math.min(residual * residual, 25 * free / w);
            excess += w * w * light * (square - free * stamp.variance());
            squared += w * w * light * light * free;
        }
        double[] follow = cross.clone();
        Cholesky.solve(factor, N, follow);
        for (int k = 0; k < N; k++) {
            curvature -= cross[k] * follow[k];
        }
        return new ProfileSlope(gradient, curvature, -follow[3], excess, squared);
    }

    /** A profile and its two neighbours in 1 / beta, for derivatives. */
    record Profiles(Moffat below, Moffat middle, Moffat above) {
        private static final double STEP = 0.01;

        static Profiles of(double inverseBeta) {
            return new Profiles(
                    new Moffat(1 / (inverseBeta - STEP)),
                    new Moffat(1 / inverseBeta),
                    new Moffat(1 / (inverseBeta + STEP)));
        }
    }

    private static MoffatModel model(Moffat profile, double[] parameters) {
        MoffatModel model = new MoffatModel(profile);
        model.set(parameters);
        return model;
    }

    private static double leverage(double[] factor, double[] slope, double weight, double[] half) {
        double sum = 0;
        for (int i = 0; i < N; i++) {
            double value = slope[i];
            for (int k = 0; k < i; k++) {
                value -= factor[i * N + k] * half[k];
            }
            half[i] = value / factor[i * N + i];
            sum += half[i] * half[i];
        }
        return Math.min(1, weight * sum);
    }
}
