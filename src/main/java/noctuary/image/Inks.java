package noctuary.image;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Optional;

/**
 * Cyan, magenta, yellow and black (0 none, all bits full) to red, green and blue: by the colour profile in the file, else
 * by the plain rule, light left by the colour times light left by the black.
 */
final class Inks {
    private final int white;
    private final Optional<ColorConvertOp> profile;

    private Inks(int white, Optional<ColorConvertOp> profile) {
        this.white = white;
        this.profile = profile;
    }

    /**
     * @param profile an ICC profile; one that is empty, damaged or of other colours counts as none
     * @param bits 8 or 16
     */
    static Inks of(byte[] profile, int bits) {
        return new Inks((1 << bits) - 1, conversion(profile));
    }

    private static Optional<ColorConvertOp> conversion(byte[] bytes) {
        try {
            ICC_Profile profile = ICC_Profile.getInstance(bytes);
            if (profile.getColorSpaceType() != ColorSpace.TYPE_CMYK) {
                return Optional.empty();
            }
            ICC_Profile rgb = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
            ColorConvertOp op = new ColorConvertOp(new ICC_Profile[] {profile, rgb}, null);
            op.filter(raster(DataBuffer.TYPE_BYTE, 1, 4), raster(DataBuffer.TYPE_BYTE, 1, 3));
            return Optional.of(op);
        } catch (RuntimeException unusable) {
            return Optional.empty();
        }
    }

    String sentence() {
        return "it is stored in cyan, magenta, yellow and black; red, green and blue were made of these "
                + (profile.isPresent()
                        ? "by the colour profile in the file"
                        : "by the plain rule, since the file has no usable colour profile");
    }

    /**
     * Turns {@code count} pixels in place.
     *
     * @param samples a pixel, of which the first four are ink and the first three become colour
     */
    void toRgb(int[] row, int samples, int count) {
        if (profile.isPresent()) {
            byProfile(row, samples, count);
            return;
        }
        for (int i = 0; i < count * samples; i += samples) {
            long light = white - row[i + 3];
            for (int c = i; c < i + 3; c++) {
                row[c] = (int) ((light * (white - row[c]) + white / 2) / white);
            }
        }
    }

    private void byProfile(int[] row, int samples, int count) {
        int type = white == 255 ? DataBuffer.TYPE_BYTE : DataBuffer.TYPE_USHORT;
        WritableRaster inks = raster(type, count, 4);
        WritableRaster rgb = raster(type, count, 3);
        int[] pixel = new int[4];
        for (int i = 0; i < count; i++) {
            System.arraycopy(row, i * samples, pixel, 0, 4);
            inks.setPixel(i, 0, pixel);
        }
        profile.get().filter(inks, rgb);
        for (int i = 0; i < count; i++) {
            rgb.getPixel(i, 0, pixel);
            System.arraycopy(pixel, 0, row, i * samples, 3);
        }
    }

    private static WritableRaster raster(int type, int width, int bands) {
        return Raster.createInterleavedRaster(type, width, 1, bands, null);
    }
}
