package noctuary.image;

import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;

/** A decoded picture turned upright. */
public final class Turned {
    private Turned() {}

    /** @param orientation 1 to 8, as {@link PictureFile#orientation} tells it */
    public static BufferedImage upright(BufferedImage stored, int orientation) {
        Upright upright = Upright.of(orientation, stored.getWidth(), stored.getHeight());
        if (upright.asStored()) {
            return stored;
        }
        WritableRaster turned =
                stored.getColorModel().createCompatibleWritableRaster(upright.width(), upright.height());
        Object pixel = null;
        for (int y = 0; y < stored.getHeight(); y++) {
            for (int x = 0; x < stored.getWidth(); x++) {
                int at = upright.index(x, y);
                pixel = stored.getRaster().getDataElements(x, y, pixel);
                turned.setDataElements(at % upright.width(), at / upright.width(), pixel);
            }
        }
        return new BufferedImage(stored.getColorModel(), turned, stored.isAlphaPremultiplied(), null);
    }
}
