package noctuary.image;

import java.util.List;

/**
 * One grid for several pictures of the same sky: the patch that all of them show, as fine as the finest, row 0 on top
 * of the screen. Where one of them shares too little with the rest, the patch is all that the reference shows.
 *
 * @param toReference where a pixel of the grid lies in the reference
 */
public record SharedGrid(Affine toReference, int width, int height) {
    /** The patch must cover this share of the smallest picture, else it is the reference's own. */
    private static final double LEAST_SHARE = 0.25;

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
                screen.xx() * finest,
                screen.xy() * finest,
                0,
                screen.yx() * finest,
                screen.yy() * finest,
                0);
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

    private static SharedGrid around(Polygon patch, Affine fine) {
        double[] box = patch.box();
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
