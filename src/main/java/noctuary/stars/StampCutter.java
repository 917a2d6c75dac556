package noctuary.stars;

import noctuary.image.Plane;

/** Cuts round stamps out of a plane, background off, without missing, uncounted and saturated pixels. */
final class StampCutter {
    /** Of a star's light, how much may pass for sky in its mesh cell. */
    private static final double WING_SHARE = 0.15;

    private final Plane plane;
    private final Sampling sampling;
    private final BackgroundMesh mesh;
    private final double saturation;

    StampCutter(Plane plane, Sampling sampling, BackgroundMesh mesh, double saturation) {
        this.plane = plane;
        this.sampling = sampling;
        this.mesh = mesh;
        this.saturation = saturation;
    }

    /** Whether the sky shows structure in the cells around pixel (x, y). */
    boolean structured(int x, int y) {
        return mesh.structured(x, y);
    }

    /** Around pixel (x, y); {@code flux} of the star, whose own wings lift the mesh. */
    Stamp cut(int x, int y, double radius, double flux) {
        int r = (int) Math.ceil(radius);
        int most = (2 * r + 1) * (2 * r + 1);
        double[] dx = new double[most];
        double[] dy = new double[most];
        double[] value = new double[most];
        float[] row = new float[2 * r + 1];
        int left = Math.max(0, x - r);
        int right = Math.min(plane.width() - 1, x + r);
        double level = mesh.levelAt(x, y);
        double acrossX = (mesh.levelAt(x + r, y) - mesh.levelAt(x - r, y)) / (2 * r);
        double acrossY = (mesh.levelAt(x, y + r) - mesh.levelAt(x, y - r)) / (2 * r);
        int n = 0;
        for (int v = Math.max(0, y - r); v <= Math.min(plane.height() - 1, y + r); v++) {
            plane.copyRow(left, v, right - left + 1, row, 0);
            for (int u = left; u <= right; u++) {
                float pixel = row[u - left];
                int i = u - x;
                int j = v - y;
                if (pixel < saturation && i * i + j * j <= radius * radius && sampling.counts(u, v)) {
                    dx[n] = i;
                    dy[n] = j;
                    value[n++] = pixel - level - acrossX * i - acrossY * j;
                }
            }
        }
        double noise = Math.max(1e-9, mesh.noiseAt(x, y));
        double wings = WING_SHARE * Math.max(0, flux) / mesh.cellArea();
        double doubt = Math.hypot(Math.hypot(0.1 * noise, wings), mesh.roughnessAt(x, y));
        return new Stamp(x, y, n, dx, dy, value, noise * noise, doubt);
    }
}
