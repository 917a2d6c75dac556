package noctuary.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.image.Mosaic;
import noctuary.image.PictureImage;
import noctuary.image.Plane;
import noctuary.image.Resample;
import noctuary.image.Stretch;

/** Pictures for pages, from planes to bytes. Nothing but the pixels is written: no header, profile or comment. */
public final class Preview {
    /** Of one preview, so that the first view of a page stays light. */
    static final int MOST_BYTES = 300_000;

    private Preview() {}

    /** One finished JPEG. {@code bytes} is not copied. */
    public record Encoded(byte[] bytes, int width, int height) {}

    /**
     * One or three linear planes, or a mosaic, stretched for the screen; the first stored row at the bottom, as FITS
     * images are drawn. All widths come from one stretch.
     *
     * @param mosaic pattern of a single plane that is a colour mosaic; drawn at half size at most
     * @param widths wanted, in pixels; a width above the source's gives the source's
     * @return one JPEG a width, in the order of {@code widths}
     */
    public static List<Encoded> ofLinear(List<Plane> planes, Optional<Mosaic> mosaic, int... widths) {
        List<Plane> widest = linear(planes, mosaic, widest(widths));
        return stretched(widest, Stretch.of(widest), widths);
    }

    /** The stretch that {@link #ofLinear} fits for these widths. */
    public static Stretch stretch(List<Plane> planes, Optional<Mosaic> mosaic, int... widths) {
        return Stretch.of(linear(planes, mosaic, widest(widths)));
    }

    /** As {@link #ofLinear}, with a given stretch, so that several images can be compared. */
    public static List<Encoded> ofLinear(List<Plane> planes, Optional<Mosaic> mosaic, Stretch stretch, int... widths) {
        return stretched(linear(planes, mosaic, widest(widths)), stretch, widths);
    }

    /** A processed picture as it is, the first stored row on top. */
    public static List<Encoded> ofPicture(PictureImage picture, int... widths) {
        List<Plane> widest = smaller(picture.planes(), widest(widths));
        List<Encoded> encoded = new ArrayList<>();
        for (int width : widths) {
            encoded.add(PreviewPixels.of(smaller(widest, width), picture.white(), false)
                    .jpeg(MOST_BYTES));
        }
        return encoded;
    }

    /** A canvas at its own size. */
    public static Encoded of(Canvas canvas) {
        return PreviewPixels.of(canvas.rows(0, canvas.height()), canvas.white(), false)
                .jpeg(MOST_BYTES);
    }

    private static List<Encoded> stretched(List<Plane> widest, Stretch stretch, int... widths) {
        List<Encoded> encoded = new ArrayList<>();
        for (int width : widths) {
            List<Plane> shown = stretch.apply(smaller(widest, width));
            encoded.add(PreviewPixels.of(shown, 1, true).jpeg(MOST_BYTES));
        }
        return encoded;
    }

    private static List<Plane> linear(List<Plane> planes, Optional<Mosaic> mosaic, int width) {
        if (mosaic.isPresent() && planes.size() == 1) {
            return Resample.colours(planes.get(0), mosaic.get(), width);
        }
        return smaller(planes, width);
    }

    private static List<Plane> smaller(List<Plane> planes, int width) {
        return planes.get(0).width() <= width
                ? planes
                : planes.stream().map(plane -> Resample.toWidth(plane, width)).toList();
    }

    private static int widest(int... widths) {
        int widest = 1;
        for (int width : widths) {
            widest = Math.max(widest, width);
        }
        return widest;
    }
}
