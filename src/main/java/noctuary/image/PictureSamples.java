package noctuary.image;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The samples of one picture, gathered band by band in the narrowest store that keeps them exactly. */
final class PictureSamples {
    private static final int UNSIGNED = 32768;

    private final int width;
    private final int height;
    private final int bits;
    private final boolean alpha;
    private final short[][] shorts;
    private final float[][] floats;
    private final Optional<TiffRows> rows;

    private PictureSamples(int width, int height, int planes, int bits, boolean alpha, Optional<TiffRows> rows) {
        this.width = width;
        this.height = height;
        this.bits = bits;
        this.alpha = alpha;
        this.rows = rows;
        this.shorts = bits < 32 ? new short[planes][width * height] : null;
        this.floats = bits < 32 ? null : new float[planes][width * height];
    }

    /** @param rows how to turn stored rows back, for TIFF */
    static PictureSamples like(BufferedImage band, int width, int height, Optional<TiffRows> rows)
            throws UnreadablePictureException {
        ColorModel colours = band.getColorModel();
        int type = colours.getColorSpace().getType();
        if (type != ColorSpace.TYPE_RGB && type != ColorSpace.TYPE_GRAY) {
            throw new UnreadablePictureException("the picture is neither grey nor RGB", "save it as RGB");
        }
        int sampleSize = band.getSampleModel().getSampleSize(0);
        int planes = PictureDecoder.hasPalette(band) ? paletteIsGrey(colours) ? 1 : 3 : colours.getNumColorComponents();
        boolean floating = rows.filter(TiffRows::hiddenFloats).isPresent();
        int bits = sampleSize <= 8 ? 8 : sampleSize <= 16 && !floating ? 16 : 32;
        return new PictureSamples(width, height, planes, bits, colours.hasAlpha(), rows);
    }

    private static boolean paletteIsGrey(ColorModel colours) {
        IndexColorModel palette = (IndexColorModel) colours;
        for (int i = 0; i < palette.getMapSize(); i++) {
            if (palette.getRed(i) != palette.getGreen(i) || palette.getRed(i) != palette.getBlue(i)) {
                return false;
            }
        }
        return true;
    }

    /** Stores the rows of {@code band} from row {@code y} of the picture on. */
    void take(BufferedImage band, int y) {
        for (int row = 0; row < band.getHeight(); row++) {
            int at = (y + row) * width;
            if (PictureDecoder.hasPalette(band)) {
                takeIndexed(band, row, at);
            } else if (rows.filter(TiffRows::hiddenFloats).isPresent()) {
                takeHiddenFloats(band.getRaster(), row, at);
            } else if (floats != null) {
                takeFloats(band.getRaster(), row, at);
            } else {
                takeIntegers(band, row, at);
            }
        }
    }

    private void takeIndexed(BufferedImage band, int row, int at) {
        IndexColorModel palette = (IndexColorModel) band.getColorModel();
        int[] index = band.getRaster().getPixels(0, row, width, 1, (int[]) null);
        for (int x = 0; x < width; x++) {
            int rgb = palette.getRGB(index[x]);
            for (int p = 0; p < shorts.length; p++) {
                shorts[p][at + x] = (short) (rgb >> 16 - 8 * p & 255);
            }
        }
    }

    private void takeHiddenFloats(Raster raster, int row, int at) {
        int[] pixels = restored(raster, row);
        int bands = raster.getNumBands();
        for (int p = 0; p < floats.length; p++) {
            for (int x = 0; x < width; x++) {
                floats[p][at + x] = rows.get().floating(pixels[x * bands + p]);
            }
        }
    }

    private int[] restored(Raster raster, int row) {
        int[] pixels = raster.getPixels(0, row, width, 1, (int[]) null);
        rows.ifPresent(r -> r.restore(pixels, raster.getNumBands()));
        return pixels;
    }

    private void takeFloats(Raster raster, int row, int at) {
        boolean unsigned = raster.getTransferType() == DataBuffer.TYPE_INT;
        int bands = raster.getNumBands();
        double[] pixels = unsigned
                ? Arrays.stream(restored(raster, row)).asDoubleStream().toArray()
                : raster.getPixels(0, row, width, 1, (double[]) null);
        for (int p = 0; p < floats.length; p++) {
            for (int x = 0; x < width; x++) {
                double value = pixels[x * bands + p];
                floats[p][at + x] = (float) (unsigned && value < 0 ? value + 0x1p32 : value);
            }
        }
    }

    private void takeIntegers(BufferedImage band, int row, int at) {
        Raster raster = band.getRaster();
        int bands = raster.getNumBands();
        int zero = bits == 16 ? UNSIGNED : 0;
        int[] pixels = restored(raster, row);
        if (alpha && band.isAlphaPremultiplied()) {
            divideByAlpha(pixels, bands, bits == 16 ? 65535 : 255);
        }
        for (int p = 0; p < shorts.length; p++) {
            short[] plane = shorts[p];
            for (int x = 0, i = p; x < width; x++, i += bands) {
                plane[at + x] = (short) (pixels[i] - zero);
            }
        }
    }

    private static void divideByAlpha(int[] pixels, int bands, int white) {
        for (int i = bands - 1; i < pixels.length; i += bands) {
            for (int p = i - bands + 1; p < i; p++) {
                long whole = pixels[i] == 0 ? 0 : Math.round((double) pixels[p] * white / pixels[i]);
                pixels[p] = (int) Math.min(white, whole);
            }
        }
    }

    PictureImage toPicture() {
        List<Plane> planes = new ArrayList<>();
        for (int p = 0; p < (floats == null ? shorts.length : floats.length); p++) {
            planes.add(
                    floats == null
                            ? Plane.ofStored(width, height, shorts[p], bits == 16 ? UNSIGNED : 0, 1)
                            : Plane.of(width, height, floats[p]));
        }
        return new PictureImage(width, height, planes, bits, white(), alpha);
    }

    private float white() {
        if (floats == null) {
            return bits == 16 ? 65535 : 255;
        }
        float largest = 0;
        for (float[] plane : floats) {
            for (float value : plane) {
                largest = value > largest && value < Float.POSITIVE_INFINITY ? value : largest;
            }
        }
        return largest <= 1 ? 1 : largest <= 65535 ? 65535 : largest;
    }
}
