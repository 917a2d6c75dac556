package noctuary.effect;

import java.util.List;
import java.util.stream.IntStream;
import noctuary.effect.Laying.Way;
import noctuary.effect.Spread.Place;
import noctuary.image.Plane;

/** Takes pixels of planes along a {@link Way}: as they are where grids agree, else between pixels. */
final class Sampler {
    private final List<Plane> planes;
    private final Way way;
    private final int samples;

    /** @param planes whose mean is taken */
    Sampler(List<Plane> planes, Way way) {
        this.planes = planes;
        this.way = way;
        double step = Math.sqrt(Math.abs(way.xx() * way.yy() - way.xy() * way.yx()));
        this.samples = Math.max(1, (int) Math.ceil(step - 0.25));
    }

    /** Row after row; NaN where nothing lies. */
    float[] take(Place place) {
        float[] values = new float[place.width() * place.height()];
        IntStream.range(0, place.height()).parallel().forEach(row -> {
            for (int column = 0; column < place.width(); column++) {
                double sum = 0;
                for (Plane plane : planes) {
                    sum += value(plane, place.x() + column, place.y() + row);
                }
                values[row * place.width() + column] = (float) (sum / planes.size());
            }
        });
        return values;
    }

    private double value(Plane plane, int x, int y) {
        if (way.whole()) {
            return at(plane, (int) Math.rint(way.x(x, y)), (int) Math.rint(way.y(x, y)));
        }
        double sum = 0;
        for (int j = 0; j < samples; j++) {
            for (int i = 0; i < samples; i++) {
                double px = x + (i + 0.5) / samples - 0.5;
                double py = y + (j + 0.5) / samples - 0.5;
                sum += between(plane, way.x(px, py), way.y(px, py));
            }
        }
        return sum / (samples * samples);
    }

    /** Straight lines between the four pixels around. */
    private static double between(Plane plane, double x, double y) {
        int left = (int) Math.floor(x);
        int top = (int) Math.floor(y);
        double tx = x - left;
        double ty = y - top;
        double upper = (1 - tx) * at(plane, left, top) + tx * at(plane, left + 1, top);
        double lower = (1 - tx) * at(plane, left, top + 1) + tx * at(plane, left + 1, top + 1);
        return (1 - ty) * upper + ty * lower;
    }

    private static float at(Plane plane, int x, int y) {
        boolean inside = x >= 0 && y >= 0 && x < plane.width() && y < plane.height();
        return inside ? plane.at(x, y) : Float.NaN;
    }
}
