package noctuary.image;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.io.EOFException;
import java.io.File;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** Reads JPEG by ImageIO, whose rows go straight into the store. */
final class JpegPicture {
    /** Each 8 x 8 pixels take one bit at least (ITU-T T.81, annexes F and G). */
    private static final int MOST_PIXELS_A_BYTE = 512;

    private final JpegHeader header;
    private final Bytes bytes;
    private final PictureStore store;

    private JpegPicture(JpegHeader header, Bytes bytes, PictureStore store) {
        this.header = header;
        this.bytes = bytes;
        this.store = store;
    }

    static PictureImage read(File file, Bytes bytes) throws IOException, UnreadablePictureException {
        JpegHeader header = JpegHeader.of(bytes);
        PictureFile.requireSize(header.width(), header.height());
        requireKnown(header);
        if ((long) header.width() * header.height() > MOST_PIXELS_A_BYTE * bytes.length()) {
            throw new EOFException();
        }
        Upright upright = Upright.of(header.orientation(), header.width(), header.height());
        PictureStore store = PictureStore.of(upright, header.components() == 1 ? 1 : 3, Byte.SIZE);
        return new JpegPicture(header, bytes, store).decode(file);
    }

    private static void requireKnown(JpegHeader header) throws UnreadablePictureException {
        if (header.process() > 2 || header.bits() != Byte.SIZE) {
            throw new UnreadablePictureException(
                    header.bits() == Byte.SIZE
                            ? "the picture is a kind of JPEG that is not read here"
                            : "the picture is a JPEG of " + header.bits() + " bits a sample",
                    "save it as plain JPEG, or as TIFF");
        }
        int colours = header.components();
        if (colours != 1 && colours != 3 && colours != 4) {
            throw new UnreadablePictureException("the picture has " + colours + " colours", "save it as RGB");
        }
    }

    private PictureImage decode(File file) throws IOException, UnreadablePictureException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("jpeg").next();
        try (ImageInputStream in = new OverlaidStream(file, hiddenProfiles())) {
            JpegWarnings warnings = JpegWarnings.of(reader);
            reader.setInput(in, true, true);
            Optional<String> conversion = header.components() == 4 ? inks(reader) : colours(reader);
            warnings.requireWhole();
            return store.toPicture(false, Optional.empty(), conversion);
        } finally {
            reader.dispose();
        }
    }

    /** ImageIO would apply a profile to the stored numbers, so that each part of it gets another name. */
    private Map<Long, Byte> hiddenProfiles() {
        Map<Long, Byte> changes = new TreeMap<>();
        header.profiles().values().forEach(part -> changes.put(part[0], (byte) '-'));
        return changes;
    }

    private Optional<String> colours(ImageReader reader) throws IOException {
        boolean grey = header.components() == 1;
        ColorSpace space = ColorSpace.getInstance(grey ? ColorSpace.CS_GRAY : ColorSpace.CS_sRGB);
        ComponentColorModel model =
                new ComponentColorModel(space, false, false, Transparency.OPAQUE, DataBuffer.TYPE_BYTE);
        StoreRaster rows = new StoreRaster(header.width(), header.height(), header.components(), store);
        ImageReadParam param = reader.getDefaultReadParam();
        param.setDestination(new BufferedImage(model, rows, false, null));
        reader.read(0, param);
        return Optional.empty();
    }

    private Optional<String> inks(ImageReader reader) throws IOException, UnreadablePictureException {
        PictureStore.requireRoom(7L * header.width() * header.height());
        Inks inks = Inks.of(header.profile(bytes), Byte.SIZE);
        Raster raster = reader.readRaster(0, null);
        for (int y = 0; y < header.height(); y++) {
            int[] row = raster.getPixels(0, y, header.width(), 1, (int[]) null);
            toInks(row);
            inks.toRgb(row, 4, header.width());
            for (int p = 0; p < 3; p++) {
                store.put(Run.of(0, y, header.width()), p, row, p, 4);
            }
        }
        return Optional.of(inks.sentence());
    }

    /** Common practice: with the maker's mark, full ink is stored as 0, and as brightness its colours are inks already. */
    private void toInks(int[] row) {
        boolean luma = header.transform() == 2;
        if (luma) {
            Luma.toRgb(row, 4);
        }
        for (int i = 0; header.inverted() && i < row.length; i++) {
            row[i] = luma && i % 4 < 3 ? row[i] : 255 - row[i];
        }
    }
}
