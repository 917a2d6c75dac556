package noctuary.demo;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import nom.tam.fits.BasicHDU;
import nom.tam.fits.Fits;
import nom.tam.fits.FitsException;
import nom.tam.fits.Header;
import nom.tam.fits.HeaderCard;
import nom.tam.fits.ImageHDU;
import nom.tam.fits.NullDataHDU;
import nom.tam.image.compression.hdu.CompressedImageHDU;
import nom.tam.util.Cursor;
import nom.tam.util.FitsOutputStream;

/** Writes counts as Rice-compressed unsigned 16-bit FITS, a tile a row. */
final class FrameWriter {
    private static final int UNSIGNED = 32768;

    private FrameWriter() {}

    /** @param planes one for a frame or a mono stack, three for a colour stack */
    static void write(Path file, int[][] planes, int width, Iterable<HeaderCard> cards) {
        try {
            Files.createDirectories(file.getParent());
            Object pixels = planes.length == 1 ? signed(planes[0], width) : signed(planes, width);
            ImageHDU image = (ImageHDU) Fits.makeHDU(pixels);
            Header header = image.getHeader();
            header.addValue("BZERO", UNSIGNED, "unsigned 16-bit");
            header.addValue("BSCALE", 1, "");
            for (HeaderCard card : cards) {
                header.addLine(card);
            }
            int[] tile = planes.length == 1 ? new int[] {width, 1} : new int[] {width, 1, 1};
            CompressedImageHDU packed = CompressedImageHDU.fromImageHDU(image, tile);
            packed.setCompressAlgorithm("RICE_1").setQuantAlgorithm((String) null);
            packed.compress();
            undated(packed.getHeader());
            save(file.toFile(), packed);
        } catch (IOException | FitsException e) {
            throw new IllegalStateException(file + " was not written", e);
        }
    }

    /** The library notes the time of writing beside its first card, which would make every build differ. */
    private static void undated(Header header) {
        for (Cursor<String, HeaderCard> at = header.iterator(); at.hasNext(); ) {
            HeaderCard card = at.next();
            if (card.getComment() != null && card.getComment().startsWith("Java FITS")) {
                card.setComment("");
            }
        }
    }

    private static void save(File file, BasicHDU<?> hdu) throws IOException, FitsException {
        try (Fits fits = new Fits();
                FitsOutputStream out = new FitsOutputStream(Files.newOutputStream(file.toPath()))) {
            NullDataHDU first = new NullDataHDU();
            undated(first.getHeader());
            fits.addHDU(first);
            fits.addHDU(hdu);
            fits.write(out);
        }
    }

    private static short[][][] signed(int[][] planes, int width) {
        short[][][] all = new short[planes.length][][];
        for (int p = 0; p < planes.length; p++) {
            all[p] = signed(planes[p], width);
        }
        return all;
    }

    private static short[][] signed(int[] counts, int width) {
        short[][] rows = new short[counts.length / width][width];
        for (int at = 0; at < counts.length; at++) {
            rows[at / width][at % width] = (short) (counts[at] - UNSIGNED);
        }
        return rows;
    }
}
