package noctuary.stars;

import noctuary.image.Plane;

/** A plane at half its resolution: means of 2 x 2 pixels, the mesh level where one of the four is missing. */
final class HalfRows implements SkyRows {
    private final Plane plane;
    private final BackgroundMesh mesh;
    private final float pedestal;
    private final int width;
    private final int height;
    private final float[] one = new float[1];

    HalfRows(Plane plane, BackgroundMesh mesh) {
        this.plane = plane;
        this.mesh = mesh;
        this.pedestal = (float) mesh.level();
        this.width = plane.width() / 2;
        this.height = plane.height() / 2;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    @Override
    public void read(int x, int y, int count, float[] row, int at) {
        int line = SkyRows.mirrored(y, height);
        int from = Math.max(0, x);
        int to = Math.min(width, x + count);
        plane.copyHalved(from, line, to - from, row, at + from - x);
        for (int i = x; i < from; i++) {
            row[at + i - x] = single(i, line);
        }
        for (int i = to; i < x + count; i++) {
            row[at + i - x] = single(i, line);
        }
        for (int i = at; i < at + count; i++) {
            row[i] -= pedestal;
        }
        if (plane.mayLack()) {
            fill(x, line, count, row, at);
        }
    }

    private float single(int x, int line) {
        plane.copyHalved(SkyRows.mirrored(x, width), line, 1, one, 0);
        return one[0];
    }

    private void fill(int x, int line, int count, float[] row, int at) {
        for (int i = at; i < at + count; i++) {
            if (!Float.isFinite(row[i])) {
                row[i] = (float) mesh.levelAt(inPixels(x + i - at), inPixels(line)) - pedestal;
            }
        }
    }

    @Override
    public float ceilingAt(double x, double y) {
        return mesh.ceilingAt(inPixels(x), inPixels(y), noiseAt(x, y));
    }

    /** Standard deviation of the sky in such a mean. */
    double noiseAt(double x, double y) {
        return mesh.noiseAt(inPixels(x), inPixels(y)) / 2;
    }

    /** The middle of the pair of pixels. */
    private static double inPixels(double half) {
        return 2 * half + 0.5;
    }
}
