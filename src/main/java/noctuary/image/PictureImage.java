package noctuary.image;

import java.util.List;
import java.util.Optional;

/**
 * A processed picture as its file stores it, turned upright where the file says how: row 0 is the top row of the
 * picture, values are the stored numbers, not scaled and not linearised, so that clipping shows at exactly 0 and
 * {@code white}.
 *
 * @param planes one (grey) or three (red, green, blue); transparency is left out, and colour that was stored multiplied
 *     by it is divided again
 * @param bitDepth bits a sample: 8, 16 or 32 (floating point, or whole numbers of 32 bits)
 * @param white the value of full white: 255 or 65535 for integers, 4294967295 for those of 32 bits; for floating point 1
 *     where no value is above it, else 65535 or, failing that, the largest value
 * @param hasAlpha whether the file carries transparency
 * @param conversion how colours that were not stored as red, green and blue became so: a sentence without its full stop
 */
public record PictureImage(
        int width,
        int height,
        List<Plane> planes,
        int bitDepth,
        float white,
        boolean hasAlpha,
        Optional<String> conversion) {
    public PictureImage {
        planes = List.copyOf(planes);
    }
}
