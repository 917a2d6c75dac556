package noctuary.image;

import java.util.List;

/**
 * One grid for several pictures of the same sky: the patch that all of them show (without its tips where it lies askew), as fine as the finest, row 0 on top
 * of the screen. Where one of them shares too little with the rest, the patch is all that the reference shows.
 *
 * @param toReference where a pixel of the grid lies in the reference
 */
public record SharedGrid(Affine toReference, int width, int height) {
    /** The patch must cover this share of the smallest picture, else it is the reference's own. */
    private static final double LEAST_SHARE = 0.25;

    private static final double EMPTY_COUNTS = 3;

    /** The largest grid, as for pictures that are read. */
    private static final double MOST_PIXELS = PictureFile.MOST_PIXELS;

    /** A picture laid on the reference: the first of a list is the reference itself. */
    public record Laid(Affine toReference, int width, int height) {}

    /** @param screen from directions on the screen (x right, y down) to directions in the reference, unit lengths */
    public static SharedGrid of(List<Laid> pictures, Affine screen) {
        double finest = pictures.stream()
                .mapToDouble(p -> Math.sqrt(p.toReference().area()))
                .min()
                .orElse(1);
        Affine fine = new Affine(
                screen.xx() * finest, screen.xy() * finest, 0, screen.yx() * finest, screen.yy() * finest, 0);
        Polygon own = outline(pictures.get(0), fine);
        Polygon shared = own;
        double smallest = own.area();
        for (Laid picture : pictures) {
            Polygon each = outline(picture, fine);
            smallest = Math.min(smallest, each.area());
            shared = shared.within(each);
        }
        return around(shared.area() < LEAST_SHARE * smallest ? own : shared, fine);
    }

    private static Polygon outline(Laid picture, Affine fine) {
        return Polygon.rectangle(picture.width(), picture.height())
                .through(fine.inverse().after(picture.toReference()));
    }

    /**
     * The upright box about the patch that shows most of it against emptiness beside it, which counts three times: a
     * patch that lies askew loses its tips rather than gaining wide black wedges.
     */
    private static double[] box(Polygon patch) {
        double[] outer = patch.box();
        double[] best = outer;
        double most = -Double.MAX_VALUE;
        for (int percent = 50; percent <= 100; percent++) {
            double trim = (100 - percent) / 200.0;
            double dx = (outer[2] - outer[0]) * trim;
            double dy = (outer[3] - outer[1]) * trim;
            double[] box = {outer[0] + dx, outer[1] + dy, outer[2] - dx, outer[3] - dy};
            double area = (box[2] - box[0]) * (box[3] - box[1]);
            double covered = patch.within(Polygon.box(box)).area();
            double worth = covered - EMPTY_COUNTS * (area - covered);
            if (worth >= most) {
                most = worth;
                best = box;
            }
        }
        return best;
    }

    private static SharedGrid around(Polygon patch, Affine fine) {
        double[] box = box(patch);
        double factor = Math.max(1, Math.sqrt((box[2] - box[0]) * (box[3] - box[1]) / MOST_PIXELS));
        int width = (int) Math.max(1, Math.floor((box[2] - box[0]) / factor + 1e-6));
        int height = (int) Math.max(1, Math.floor((box[3] - box[1]) / factor + 1e-6));
        Affine place = new Affine(factor, 0, box[0] + factor / 2, 0, factor, box[1] + factor / 2);
        return new SharedGrid(fine.after(place), width, height);
    }

    /** The same patch on a smaller grid. */
    public SharedGrid toWidth(int most) {
        if (width <= most) {
            return this;
        }
        double factor = (double) width / most;
        return new SharedGrid(
                toReference.after(Affine.enlarged(factor)), most, (int) Math.max(1, Math.round(height / factor)));
    }
}
