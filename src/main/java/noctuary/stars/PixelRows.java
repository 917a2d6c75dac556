package noctuary.stars;

import noctuary.image.Plane;

/**
 * Rows of a plane made whole, less a pedestal: mirrored beyond the edges, the mesh level where pixels are missing, the
 * mean of the four neighbours where they do not count.
 */
final class PixelRows implements SkyRows {
    private final Plane plane;
    private final Sampling sampling;
    private final BackgroundMesh mesh;
    private final float pedestal;
    private float[] above = new float[0];
    private float[] below = new float[0];

    PixelRows(Plane plane, Sampling sampling, BackgroundMesh mesh) {
        this.plane = plane;
        this.sampling = sampling;
        this.mesh = mesh;
        this.pedestal = (float) mesh.level();
    }

    @Override
    public void read(int x, int y, int count, float[] row, int at) {
        plain(x, y, count, row, at);
        if (sampling.all()) {
            return;
        }
        if (above.length < count + 2) {
            above = new float[count + 2];
            below = new float[count + 2];
        }
        plain(x, y - 1, count, above, 0);
        plain(x, y + 1, count, below, 0);
        float before = single(x - 1, y);
        float after = single(x + count, y);
        for (int i = Math.floorMod(x + y + sampling.parity() + 1, 2); i < count; i += 2) {
            float left = i > 0 ? row[at + i - 1] : before;
            float right = i < count - 1 ? row[at + i + 1] : after;
            row[at + i] = 0.25f * (left + right + above[i] + below[i]);
        }
    }

    private void plain(int x, int y, int count, float[] row, int at) {
        int line = SkyRows.mirrored(y, plane.height());
        int from = Math.max(0, x);
        int to = Math.min(plane.width(), x + count);
        plane.copyRow(from, line, to - from, row, at + from - x);
        for (int i = at + from - x; i < at + to - x; i++) {
            row[i] -= pedestal;
        }
        for (int i = 0; i < from - x; i++) {
            row[at + i] = single(x + i, y);
        }
        for (int i = to - x; i < count; i++) {
            row[at + i] = single(x + i, y);
        }
        if (plane.mayLack()) {
            fillMissing(x, line, count, row, at);
        }
    }

    private void fillMissing(int x, int line, int count, float[] row, int at) {
        for (int i = at; i < at + count; i++) {
            if (!Float.isFinite(row[i])) {
                row[i] = (float) mesh.levelAt(x + i - at, line) - pedestal;
            }
        }
    }

    private float single(int x, int y) {
        int column = SkyRows.mirrored(x, plane.width());
        int line = SkyRows.mirrored(y, plane.height());
        float value = plane.at(column, line) - pedestal;
        return Float.isFinite(value) ? value : (float) mesh.levelAt(column, line) - pedestal;
    }

    @Override
    public float ceilingAt(double x, double y) {
        return mesh.ceilingAt(x, y, mesh.noiseAt(x, y));
    }
}
