package noctuary.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.image.Affine;
import noctuary.image.Mosaic;
import noctuary.image.PictureImage;
import noctuary.image.Plane;
import noctuary.image.Regrid;
import noctuary.image.Resample;
import noctuary.image.SharedGrid;
import noctuary.image.Stretch;

/** A picture as it stands on the screen, made a few rows at a time, so that large ones need no second copy. */
public interface Canvas {
    int width();

    int height();

    /** The value of full white. */
    float white();

    /** Display values of {@code count} rows from row {@code top} of the screen on, one plane or three; NaN is black. */
    List<Plane> rows(int top, int count);

    /** A processed picture as it is. */
    static Canvas ofPicture(PictureImage picture) {
        List<Plane> planes = picture.planes();
        return new RowCanvas(
                planes.get(0),
                picture.white(),
                (top, count) -> planes.stream()
                        .map(plane -> plane.cut(0, top, plane.width(), count))
                        .toList());
    }

    /** Linear planes, or a mosaic at half its size, under a stretch; the first stored row at the bottom. */
    static Canvas ofLinear(List<Plane> planes, Optional<Mosaic> mosaic, Stretch stretch) {
        List<Plane> colours = mosaic.isPresent() && planes.size() == 1
                ? Resample.colours(planes.get(0), mosaic.get(), Integer.MAX_VALUE)
                : planes;
        int height = colours.get(0).height();
        return new RowCanvas(
                colours.get(0),
                1,
                (top, count) -> stretch.apply(colours.stream()
                        .map(plane -> upsideDown(plane, height - top - count, count))
                        .toList()));
    }

    /**
     * Planes laid on a grid.
     *
     * @param toPlanes where a pixel of the reference, that the grid is made for, lies in the planes
     * @param stretch empty for a finished picture, whose full white is {@code white}
     */
    static Canvas laid(List<Plane> planes, Affine toPlanes, SharedGrid grid, Optional<Stretch> stretch, float white) {
        Affine map = toPlanes.after(grid.toReference());
        return new RowCanvas(grid.width(), grid.height(), stretch.isPresent() ? 1 : white, (top, count) -> {
            Affine rows = map.after(Affine.shift(0, top));
            List<Plane> laid = new ArrayList<>();
            planes.forEach(plane -> laid.add(Regrid.onto(plane, rows, grid.width(), count)));
            return stretch.map(s -> s.apply(laid)).orElse(laid);
        });
    }

    private static Plane upsideDown(Plane plane, int from, int count) {
        int width = plane.width();
        float[] pixels = new float[width * count];
        for (int row = 0; row < count; row++) {
            plane.copyRow(0, from + row, width, pixels, (count - 1 - row) * width);
        }
        return Plane.of(width, count, pixels);
    }
}
