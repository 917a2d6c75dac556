package noctuary.stars;

import java.util.Arrays;

/**
 * Levenberg-Marquardt fit of one pixel-integrated elliptical Moffat to a stamp. Pixels weigh by the variance of sky,
 * readout and the star's own photons; the background may leave the mesh's by as much as the mesh may be off. Not safe
 * for two threads at once.
 */
final class ShapeFit {
    private static final int N = MoffatModel.PARAMETERS;
    private static final int MOST_PASSES = 40;
    private static final double ENOUGH = 0.02;
    /** Change of flux from which the weights are made anew. */
    private static final double STALE = 0.15;

    private static final double NARROWEST = Math.log(0.25);
    private static final double WIDEST = Math.log(80);

    private final MoffatModel model;
    private final double photonSlope;
    private final double[] slope = new double[N];
    private double[] weight = new double[0];
    private double[] parameters;
    private double[] hessian = new double[N * N];
    private double[] gradient = new double[N];
    private double chiSquare;

    /** @param photonSlope variance that one ADU of starlight adds, ADU (the inverse of the gain) */
    ShapeFit(Moffat profile, double photonSlope) {
        this.model = new MoffatModel(profile);
        this.photonSlope = photonSlope;
    }

    /** Fits from a start of seven parameters (see {@link MoffatModel}), positions relative to the stamp's pixel. */
    Shape fit(Stamp stamp, double[] start) {
        parameters = start.clone();
        weigh(stamp);
        boolean converged = descend(stamp);
        if (Math.abs(parameters[0] - start[0]) > STALE * Math.abs(start[0]) && photonSlope > 0) {
            weigh(stamp);
            converged = descend(stamp);
        }
        return shape(stamp, converged);
    }

    /** The seven parameters of the last fit. */
    double[] parameters() {
        return parameters;
    }

    /** Weight of each pixel of the last fit, one over its variance. */
    double[] weights() {
        return weight;
    }

    /** Curvature of half the chi-square of the last fit, background prior included. */
    double[] curvature() {
        return hessian;
    }

    private void weigh(Stamp stamp) {
        if (weight.length < stamp.n()) {
            weight = new double[stamp.n()];
        }
        if (photonSlope == 0) {
            Arrays.fill(weight, 1 / stamp.variance());
            return;
        }
        model.set(parameters);
        for (int i = 0; i < stamp.n(); i++) {
            double light = model.value(stamp.dx()[i], stamp.dy()[i]) - parameters[6];
            weight[i] = 1 / (stamp.variance() + photonSlope * Math.max(0, light));
        }
    }

    private boolean descend(Stamp stamp) {
        double lambda = 1e-3;
        chiSquare = accumulate(stamp, parameters, hessian, gradient);
        double[] trialHessian = new double[N * N];
        double[] trialGradient = new double[N];
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double[] trial = step(lambda);
            if (trial != null && promise(trial) < ENOUGH) {
                parameters = trial;
                return true;
            }
            double before = chiSquare;
            double after = trial == null ? Double.NaN : accumulate(stamp, trial, trialHessian, trialGradient);
            if (after <= before) {
                parameters = trial;
                chiSquare = after;
                double[] swap = hessian;
                hessian = trialHessian;
                trialHessian = swap;
                swap = gradient;
                gradient = trialGradient;
                trialGradient = swap;
                lambda = Math.max(1e-7, lambda / 10);
                if (before - after < ENOUGH) {
                    return true;
                }
            } else {
                lambda *= 10;
                if (lambda > 1e6) {
                    return !Double.isNaN(after) && after - before < ENOUGH;
                }
            }
        }
        return false;
    }

    /** Decrease of chi-square that a step to {@code trial} promises. */
    private double promise(double[] trial) {
        double sum = 0;
        for (int i = 0; i < N; i++) {
            double move = trial[i] - parameters[i];
            double bent = 0;
            for (int j = 0; j < N; j++) {
                bent += hessian[i * N + j] * (trial[j] - parameters[j]);
            }
            sum += move * (2 * gradient[i] - bent);
        }
        return sum;
    }

    private double[] step(double lambda) {
        double[] a = hessian.clone();
        for (int i = 0; i < N; i++) {
            a[i * N + i] *= 1 + lambda;
        }
        if (!Cholesky.factor(a, N)) {
            return null;
        }
        double[] move = gradient.clone();
        Cholesky.solve(a, N, move);
        double width = Math.exp(parameters[3]);
        double longest = Math.max(
                Math.hypot(move[1], move[2]) / (0.5 * width + 0.2),
                Math.max(Math.abs(move[3]) / 0.5, Math.hypot(move[4], move[5]) / 0.4));
        double share = Math.min(1, 1 / Math.max(1e-9, longest));
        double[] trial = parameters.clone();
        for (int i = 0; i < N; i++) {
            trial[i] += share * move[i];
        }
        trial[3] = Math.max(NARROWEST, Math.min(WIDEST, trial[3]));
        double g = Math.hypot(trial[4], trial[5]);
        if (g > 1.2) {
            trial[4] *= 1.2 / g;
            trial[5] *= 1.2 / g;
        }
        return trial;
    }

    private double accumulate(Stamp stamp, double[] p, double[] h, double[] g) {
        Arrays.fill(h, 0);
        Arrays.fill(g, 0);
        model.set(p);
        double sum = 0;
        for (int k = 0; k < stamp.n(); k++) {
            double residual = stamp.value()[k] - model.value(stamp.dx()[k], stamp.dy()[k], slope);
            double w = weight[k];
            sum += w * residual * residual;
            addProducts(slope, w, h);
            double pull = w * residual;
            for (int i = 0; i < N; i++) {
                g[i] += pull * slope[i];
            }
        }
        double prior = 1 / (stamp.backgroundSigma() * stamp.backgroundSigma());
        h[N * N - 1] += prior;
        g[N - 1] -= prior * p[N - 1];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < i; j++) {
                h[j * N + i] = h[i * N + j];
            }
        }
        return sum + prior * p[N - 1] * p[N - 1];
    }

    /** Adds to the lower triangle; written out because the fits spend most of their time here. */
    private static void addProducts(double[] s, double w, double[] h) {
        double w0 = w * s[0];
        h[0] += w0 * s[0];
        double w1 = w * s[1];
        h[7] += w1 * s[0];
        h[8] += w1 * s[1];
        double w2 = w * s[2];
        h[14] += w2 * s[0];
        h[15] += w2 * s[1];
        h[16] += w2 * s[2];
        double w3 = w * s[3];
        h[21] += w3 * s[0];
        h[22] += w3 * s[1];
        h[23] += w3 * s[2];
        h[24] += w3 * s[3];
        double w4 = w * s[4];
        h[28] += w4 * s[0];
        h[29] += w4 * s[1];
        h[30] += w4 * s[2];
        h[31] += w4 * s[3];
        h[32] += w4 * s[4];
        double w5 = w * s[5];
        h[35] += w5 * s[0];
        h[36] += w5 * s[1];
        h[37] += w5 * s[2];
        h[38] += w5 * s[3];
        h[39] += w5 * s[4];
        h[40] += w5 * s[5];
        double w6 = w * s[6];
        h[42] += w6 * s[0];
        h[43] += w6 * s[1];
        h[44] += w6 * s[2];
        h[45] += w6 * s[3];
        h[46] += w6 * s[4];
        h[47] += w6 * s[5];
        h[48] += w6 * s[6];
    }

    private Shape shape(Stamp stamp, boolean converged) {
        double[] p = parameters;
        double[] factor = hessian.clone();
        boolean sound = converged && Cholesky.factor(factor, N) && p[0] > 0;
        double[] error = new double[N];
        for (int i = 0; sound && i < N; i++) {
            error[i] = Math.sqrt(Cholesky.inverseColumn(factor, N, i)[i]);
        }
        return new Shape(
                p[0],
                stamp.x() + p[1],
                stamp.y() + p[2],
                p[3],
                new Shear(p[4], p[5]),
                p[6],
                error[0],
                error[3],
                Math.sqrt((error[4] * error[4] + error[5] * error[5]) / 2),
                chiSquare / Math.max(1, stamp.n() - N),
                sound);
    }
}
