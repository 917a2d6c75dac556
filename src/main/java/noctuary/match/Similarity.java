package noctuary.match;

/** w = a z + t in complex numbers, with z = x + iy, or -x + iy where mirrored. */
record Similarity(double re, double im, double tx, double ty, boolean mirrored) {

    static Similarity of(Alignment alignment) {
        double angle = Math.toRadians(alignment.rotationDeg());
        return new Similarity(
                alignment.scale() * Math.cos(angle),
                alignment.scale() * Math.sin(angle),
                alignment.shiftX(),
                alignment.shiftY(),
                alignment.mirrored());
    }

    /**
     * Weighted least squares over pairs of positions: a = Σ conj(z') w' / Σ |z'|², t = w̄ - a z̄, primes from the mean.
     *
     * @param count how many entries of the arrays are used, at least 2 of them apart
     */
    static Similarity fit(
            double[] x, double[] y, double[] u, double[] v, double[] weight, int count, boolean mirrored) {
        double sign = mirrored ? -1 : 1;
        double all = 0;
        double mx = 0;
        double my = 0;
        double mu = 0;
        double mv = 0;
        for (int i = 0; i < count; i++) {
            all += weight[i];
            mx += weight[i] * sign * x[i];
            my += weight[i] * y[i];
            mu += weight[i] * u[i];
            mv += weight[i] * v[i];
        }
        mx /= all;
        my /= all;
        mu /= all;
        mv /= all;
        double re = 0;
        double im = 0;
        double norm = 0;
        for (int i = 0; i < count; i++) {
            double dx = weight[i] * (sign * x[i] - mx);
            double dy = weight[i] * (y[i] - my);
            re += dx * (u[i] - mu) + dy * (v[i] - mv);
            im += dx * (v[i] - mv) - dy * (u[i] - mu);
            norm += dx * (sign * x[i] - mx) + dy * (y[i] - my);
        }
        re /= norm;
        im /= norm;
        return new Similarity(re, im, mu - re * mx + im * my, mv - re * my - im * mx, mirrored);
    }

    double toX(double x, double y) {
        return re * (mirrored ? -x : x) - im * y + tx;
    }

    double toY(double x, double y) {
        return im * (mirrored ? -x : x) + re * y + ty;
    }

    double scale() {
        return Math.hypot(re, im);
    }

    /** z = (w - t) / a; mirrored, that is -x + iy, so the conjugate turned by half a circle. */
    Similarity inverse() {
        double norm = re * re + im * im;
        double ire = re / norm;
        double iim = (mirrored ? im : -im) / norm;
        Similarity turned = new Similarity(ire, iim, 0, 0, mirrored);
        return new Similarity(ire, iim, -turned.toX(tx, ty), -turned.toY(tx, ty), mirrored);
    }

    boolean finite() {
        return Double.isFinite(re) && Double.isFinite(im) && Double.isFinite(tx) && Double.isFinite(ty) && scale() > 0;
    }

    Alignment alignment(int matched, double rmsPx) {
        return new Alignment(scale(), Math.toDegrees(Math.atan2(im, re)), mirrored, tx, ty, matched, rmsPx);
    }
}
