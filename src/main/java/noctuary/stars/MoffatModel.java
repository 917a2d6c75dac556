package noctuary.stars;

/**
 * An elliptical Moffat profile integrated over pixels, with its derivatives. Parameters: 0 flux, 1 x, 2 y, 3 logarithm
 * of the FWHM, 4 and 5 the shear components, 6 background. Set the parameters, then ask pixel by pixel.
 */
final class MoffatModel {
    static final int PARAMETERS = 7;

    private final Moffat profile;
    private final double fwhmOverAlpha;
    private double flux;
    private double x0;
    private double y0;
    private double background;
    private double peak;
    private double xx;
    private double xy;
    private double yy;
    private double xx1;
    private double xy1;
    private double yy1;
    private double xx2;
    private double xy2;
    private double yy2;
    private double coreSquared;
    private double wingSquared;
    private int coreOrder;
    private int middleOrder;
    private int wingOrder;
    private double share;
    private double sx;
    private double sy;
    private double sxx;
    private double sxy;
    private double syy;

    MoffatModel(Moffat profile) {
        this.profile = profile;
        this.fwhmOverAlpha = profile.fwhmOverAlpha();
    }

    void set(double[] p) {
        flux = p[0];
        x0 = p[1];
        y0 = p[2];
        background = p[6];
        double fwhm = Math.exp(p[3]);
        double alpha = fwhm / fwhmOverAlpha;
        double a2 = 1 / (alpha * alpha);
        peak = (profile.beta() - 1) / Math.PI * a2;
        double g1 = p[4];
        double g2 = p[5];
        double g = Math.hypot(g1, g2);
        double c = Math.cosh(2 * g) * a2;
        double s = (g < 1e-4 ? 2 + 4 * g * g / 3 : Math.sinh(2 * g) / g) * a2;
        double k = g < 1e-2
                ? (8.0 / 3 + 16 * g * g / 15) * a2
                : (2 * g * Math.cosh(2 * g) - Math.sinh(2 * g)) / (g * g * g) * a2;
        xx = c - s * g1;
        yy = c + s * g1;
        xy = -s * g2;
        xx1 = 2 * s * g1 - s - k * g1 * g1;
        yy1 = 2 * s * g1 + s + k * g1 * g1;
        xy1 = -k * g1 * g2;
        xx2 = 2 * s * g2 - k * g1 * g2;
        yy2 = 2 * s * g2 + k * g1 * g2;
        xy2 = -s - k * g2 * g2;
        double minor = fwhm * Math.exp(-g);
        coreOrder = Quadrature.coreOrder(minor);
        middleOrder = Math.max(2, coreOrder - 1);
        wingOrder = Quadrature.wingOrder(minor);
        double core = 0.8 * fwhm + 0.5;
        coreSquared = core * core;
        wingSquared = 4 * core * core;
    }

    /** Light in the pixel at (dx, dy), background included. */
    double value(double dx, double dy) {
        integrate(dx - x0, dy - y0);
        return flux * share + background;
    }

    /** As {@link #value}, and its derivatives by all parameters into {@code slope}. */
    double value(double dx, double dy, double[] slope) {
        integrateWithSlopes(dx - x0, dy - y0);
        double scale = -2 * flux;
        slope[0] = share;
        slope[1] = scale * (xx * sx + xy * sy);
        slope[2] = scale * (xy * sx + yy * sy);
        slope[3] = scale * (share + xx * sxx + 2 * xy * sxy + yy * syy);
        slope[4] = flux * (xx1 * sxx + 2 * xy1 * sxy + yy1 * syy);
        slope[5] = flux * (xx2 * sxx + 2 * xy2 * sxy + yy2 * syy);
        slope[6] = 1;
        return flux * share + background;
    }

    private void integrate(double dx, double dy) {
        int order = order(dx * dx + dy * dy);
        if (order == 1) {
            double v = 1 + xx * dx * dx + 2 * xy * dx * dy + yy * dy * dy;
            share = peak * profile.at(v) * overCentre(dx, dy, v);
            return;
        }
        double[] node = Quadrature.nodes(order);
        double[] weight = Quadrature.weights(order);
        double sum = 0;
        for (int j = 0; j < order; j++) {
            double v = dy + node[j];
            double line = 0;
            for (int i = 0; i < order; i++) {
                double u = dx + node[i];
                line += weight[i] * profile.at(1 + xx * u * u + 2 * xy * u * v + yy * v * v);
            }
            sum += weight[j] * line;
        }
        share = peak * sum;
    }

    private int order(double squaredDistance) {
        return squaredDistance < coreSquared ? coreOrder : squaredDistance < wingSquared ? middleOrder : wingOrder;
    }

    /** Mean over a pixel over the value at its centre, from the Laplacian: mean = f + (f_xx + f_yy) / 24. */
    private double overCentre(double dx, double dy, double v) {
        double gx = xx * dx + xy * dy;
        double gy = xy * dx + yy * dy;
        double beta = profile.beta();
        return 1 + beta / (12 * v) * (2 * (beta + 1) * (gx * gx + gy * gy) / v - (xx + yy));
    }

    private void atCentre(double dx, double dy) {
        double v = 1 + xx * dx * dx + 2 * xy * dx * dy + yy * dy * dy;
        share = peak * profile.at(v) * overCentre(dx, dy, v);
        double slope = -profile.beta() * share / v;
        sx = slope * dx;
        sy = slope * dy;
        sxx = sx * dx;
        sxy = sx * dy;
        syy = sy * dy;
    }

    private void integrateWithSlopes(double dx, double dy) {
        int order = order(dx * dx + dy * dy);
        if (order == 1) {
            atCentre(dx, dy);
            return;
        }
        double[] node = Quadrature.nodes(order);
        double[] weight = Quadrature.weights(order);
        double sum = 0;
        double mx = 0;
        double my = 0;
        double mxx = 0;
        double mxy = 0;
        double myy = 0;
        for (int j = 0; j < order; j++) {
            double v = dy + node[j];
            for (int i = 0; i < order; i++) {
                double u = dx + node[i];
                double q = 1 + xx * u * u + 2 * xy * u * v + yy * v * v;
                double f = weight[i] * weight[j] * profile.at(q);
                double slope = f / q;
                sum += f;
                mx += slope * u;
                my += slope * v;
                mxx += slope * u * u;
                mxy += slope * u * v;
                myy += slope * v * v;
            }
        }
        double scale = -profile.beta() * peak;
        share = peak * sum;
        sx = scale * mx;
        sy = scale * my;
        sxx = scale * mxx;
        sxy = scale * mxy;
        syy = scale * myy;
    }
}
