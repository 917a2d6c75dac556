package noctuary.fits;

import java.util.List;
import noctuary.image.Plane;

/**
 * The image of a FITS file: its header (primary cards inherited where the standard says so) and one or three planes.
 *
 * @param bitpix of the stored pixels, after decompression
 * @param pixelDigest identity of the pixels (hex), the same however the file is compressed or its header edited
 */
public record FitsImage(List<Card> cards, FrameHeader header, List<Plane> planes, int bitpix, String pixelDigest) {
    public FitsImage {
        cards = List.copyOf(cards);
        planes = List.copyOf(planes);
    }
}
