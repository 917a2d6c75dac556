package noctuary.stars.sim;

/**
 * Cramér-Rao bound of the logarithmic width of a planted star whose beta is known, by a numerical Fisher matrix over
 * flux, place, width, both components of elongation and the background, as the fits have them.
 */
public final class WidthBound {
    private static final int N = 7;
    private static final int WIDTH = 3;

    private WidthBound() {}

    /** @param variance of sky and readout a pixel, electrons² */
    public static double of(PlantedStar star, double variance) {
        double g = -Math.log(1 - star.ellipticity()) / 2;
        double twice = Math.toRadians(2 * star.angleDeg());
        double[] at = {
            star.fluxElectrons(),
            star.x() - Math.rint(star.x()),
            star.y() - Math.rint(star.y()),
            Math.log(star.fwhmPx()),
            g * Math.cos(twice),
            g * Math.sin(twice),
            0
        };
        double[] step = {star.fluxElectrons() * 1e-3, 1e-3, 1e-3, 1e-3, 1e-3, 1e-3, 1e-3};
        int reach = (int) Math.ceil(2.5 * star.fwhmPx() + 2);
        double[][] slopes = new double[N][];
        for (int k = 0; k < N; k++) {
            double[] low = at.clone();
            double[] high = at.clone();
            low[k] -= step[k];
            high[k] += step[k];
            double[] below = light(low, star.beta(), reach);
            slopes[k] = light(high, star.beta(), reach);
            for (int i = 0; i < below.length; i++) {
                slopes[k][i] = (slopes[k][i] - below[i]) / (2 * step[k]);
            }
        }
        return Math.sqrt(inverse(fisher(slopes, light(at, star.beta(), reach), variance)));
    }

    private static double[] light(double[] p, double beta, int reach) {
        double length = Math.hypot(p[4], p[5]);
        double angle = Math.toDegrees(Math.atan2(p[5], p[4])) / 2;
        MoffatStamp stamp = new MoffatStamp(Math.exp(p[3]), -Math.expm1(-2 * length), angle, beta);
        int side = 2 * reach + 1;
        double[] light = new double[side * side];
        for (int i = 0; i < light.length; i++) {
            light[i] = p[0] * stamp.share(i % side - reach - p[1], i / side - reach - p[2]) + p[6];
        }
        return light;
    }

    private static double[][] fisher(double[][] slopes, double[] light, double variance) {
        double[][] fisher = new double[N][N];
        for (int a = 0; a < N; a++) {
            for (int b = 0; b < N; b++) {
                for (int i = 0; i < light.length; i++) {
                    fisher[a][b] += slopes[a][i] * slopes[b][i] / (variance + light[i]);
                }
            }
        }
        return fisher;
    }

    /** The diagonal element of the inverse that belongs to the width: Gauss and Jordan, scaled to unit diagonal. */
    private static double inverse(double[][] fisher) {
        double[] scale = new double[N];
        for (int i = 0; i < N; i++) {
            scale[i] = Math.sqrt(fisher[i][i]);
        }
        double[][] m = new double[N][N + 1];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                m[i][j] = fisher[i][j] / (scale[i] * scale[j]);
            }
        }
        m[WIDTH][N] = 1;
        for (int pivot = 0; pivot < N; pivot++) {
            for (int row = 0; row < N; row++) {
                double factor = row == pivot ? 0 : m[row][pivot] / m[pivot][pivot];
                for (int j = pivot; j <= N && factor != 0; j++) {
                    m[row][j] -= factor * m[pivot][j];
                }
            }
        }
        return m[WIDTH][N] / m[WIDTH][WIDTH] / (scale[WIDTH] * scale[WIDTH]);
    }
}
