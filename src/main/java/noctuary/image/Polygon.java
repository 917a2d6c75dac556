package noctuary.image;

import java.util.Arrays;

/** A convex polygon. */
record Polygon(double[] x, double[] y) {
    /** The outer edges of a picture. */
    static Polygon rectangle(int width, int height) {
        return new Polygon(
                new double[] {-0.5, width - 0.5, width - 0.5, -0.5},
                new double[] {-0.5, -0.5, height - 0.5, height - 0.5});
    }

    /** @param edges least and greatest of each: {x, y, x, y} */
    static Polygon box(double[] edges) {
        return new Polygon(
                new double[] {edges[0], edges[2], edges[2], edges[0]},
                new double[] {edges[1], edges[1], edges[3], edges[3]});
    }

    Polygon through(Affine map) {
        double[] u = new double[x.length];
        double[] v = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            u[i] = map.x(x[i], y[i]);
            v[i] = map.y(x[i], y[i]);
        }
        return new Polygon(u, v);
    }

    double area() {
        return Math.abs(turning());
    }

    /** Area, negative when the corners run the other way round. */
    private double turning() {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            int next = (i + 1) % x.length;
            sum += x[i] * y[next] - x[next] * y[i];
        }
        return sum / 2;
    }

    /** What both cover (Sutherland and Hodgman 1974, Communications of the ACM 17, 32). */
    Polygon within(Polygon other) {
        double way = other.turning() >= 0 ? 1 : -1;
        Polygon left = this;
        for (int i = 0; i < other.x.length; i++) {
            int next = (i + 1) % other.x.length;
            double dx = (other.x[next] - other.x[i]) * way;
            double dy = (other.y[next] - other.y[i]) * way;
            left = left.cut(other.x[i], other.y[i], dx, dy);
        }
        return left;
    }

    /** The part to the left of a line. */
    private Polygon cut(double fromX, double fromY, double dx, double dy) {
        double[] u = new double[2 * x.length];
        double[] v = new double[2 * x.length];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            int next = (i + 1) % x.length;
            double here = dx * (y[i] - fromY) - dy * (x[i] - fromX);
            double there = dx * (y[next] - fromY) - dy * (x[next] - fromX);
            if (here >= 0) {
                u[count] = x[i];
                v[count++] = y[i];
            }
            if (here >= 0 != there >= 0) {
                double t = here / (here - there);
                u[count] = x[i] + t * (x[next] - x[i]);
                v[count++] = y[i] + t * (y[next] - y[i]);
            }
        }
        return new Polygon(Arrays.copyOf(u, count), Arrays.copyOf(v, count));
    }

    /** Least and greatest of each: {x, y, x, y}. */
    double[] box() {
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (int i = 0; i < x.length; i++) {
            box[0] = Math.min(box[0], x[i]);
            box[1] = Math.min(box[1], y[i]);
            box[2] = Math.max(box[2], x[i]);
            box[3] = Math.max(box[3], y[i]);
        }
        return box;
    }
}
