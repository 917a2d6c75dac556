package noctuary.demo;

/**
 * Puts stars into planes: elliptical Moffat profiles integrated over each pixel, with an aureole and rays where bright.
 */
final class StarPainter {
    private static final double BETA = 3.0;
    private static final double AUREOLE = 0.025;
    private static final double AUREOLE_FWHM = 15;
    private static final double RAYS = 0.012;

    private final float[][] planes;
    private final int width;
    private final int height;
    private final double faint;

    /** @param faint electrons a second a pixel below which light is let go */
    StarPainter(float[][] planes, int width, int height, double faint) {
        this.planes = planes;
        this.width = width;
        this.height = height;
        this.faint = faint;
    }

    /** @param rates electrons a second of the star, a plane each */
    void paint(double x, double y, double[] rates, Shape shape, boolean spider) {
        double strongest = 0;
        for (double rate : rates) {
            strongest = Math.max(strongest, rate);
        }
        boolean bright = strongest > 6000 * faint;
        double core = bright ? 1 - AUREOLE - (spider ? RAYS : 0) : 1;
        profile(x, y, rates, shape, BETA, core, reach(strongest, shape.majorPx()));
        if (bright) {
            double grow = Math.min(220, 1.3 * AUREOLE_FWHM * StrictMath.pow(AUREOLE * strongest / faint / 300, 0.25));
            profile(x, y, rates, new Shape(AUREOLE_FWHM, AUREOLE_FWHM, 0), 2, AUREOLE, grow);
            if (spider) {
                rays(x, y, rates, strongest);
            }
        }
    }

    private double reach(double strongest, double fwhm) {
        double peak = 0.5 * strongest / (fwhm * fwhm);
        return fwhm * Math.max(1.5, Math.min(30, 0.9 * StrictMath.pow(peak / faint, 1 / (2 * BETA)))) + 1;
    }

    private void profile(double x, double y, double[] rates, Shape shape, double beta, double share, double reach) {
        int x0 = (int) Math.max(0, Math.ceil(x - reach));
        int x1 = (int) Math.min(width - 1, Math.floor(x + reach));
        int y0 = (int) Math.max(0, Math.ceil(y - reach));
        int y1 = (int) Math.min(height - 1, Math.floor(y + reach));
        double spread = 4 * (StrictMath.pow(2, 1 / beta) - 1);
        double cos = StrictMath.cos(shape.angleRad());
        double sin = StrictMath.sin(shape.angleRad());
        double a = spread / (shape.majorPx() * shape.majorPx());
        double b = spread / (shape.minorPx() * shape.minorPx());
        double peak = share * (beta - 1) * Math.sqrt(a * b) / Math.PI;
        for (int j = y0; j <= y1; j++) {
            for (int i = x0; i <= x1; i++) {
                double dx = i - x;
                double dy = j - y;
                int fine = dx * dx + dy * dy < 4 * shape.majorPx() * shape.majorPx() ? 5 : 2;
                double sum = 0;
                for (int v = 0; v < fine; v++) {
                    for (int u = 0; u < fine; u++) {
                        double ex = dx + (u + 0.5) / fine - 0.5;
                        double ey = dy + (v + 0.5) / fine - 0.5;
                        double along = ex * cos + ey * sin;
                        double across = ey * cos - ex * sin;
                        double base = 1 + a * along * along + b * across * across;
                        sum += beta == 2 ? 1 / (base * base) : 1 / (base * base * base);
                    }
                }
                add(i, j, rates, peak * sum / (fine * fine));
            }
        }
    }

    /** Four rays along directions fixed to the tube, a pixel and a half wide. */
    private void rays(double x, double y, double[] rates, double strongest) {
        double reach = Math.min(170, 0.03 * Math.sqrt(strongest / faint) * 10);
        for (int arm = 0; arm < 4; arm++) {
            double angle = StrictMath.toRadians(38 + 90.0 * arm);
            double cos = StrictMath.cos(angle);
            double sin = StrictMath.sin(angle);
            for (double r = 1; r < reach; r += 0.5) {
                double light = RAYS / 4 * 0.5 * 9 / ((r + 9) * (r + 9)) * (1 - r / reach);
                spread(x + r * cos, y + r * sin, rates, light);
            }
        }
    }

    private void spread(double x, double y, double[] rates, double light) {
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        double fx = x - i;
        double fy = y - j;
        add(i, j, rates, light * (1 - fx) * (1 - fy));
        add(i + 1, j, rates, light * fx * (1 - fy));
        add(i, j + 1, rates, light * (1 - fx) * fy);
        add(i + 1, j + 1, rates, light * fx * fy);
    }

    private void add(int i, int j, double[] rates, double light) {
        if (i < 0 || j < 0 || i >= width || j >= height) {
            return;
        }
        for (int p = 0; p < planes.length; p++) {
            planes[p][j * width + i] += (float) (rates[p] * light);
        }
    }
}
