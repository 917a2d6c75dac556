package noctuary.stars.sim;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import noctuary.image.Plane;

/** Writes a plane as a plain 16-bit FITS file (FITS 4.0, section 5.2.5), so that other programs measure the same. */
public final class FitsBytes {
    private FitsBytes() {}

    public static void write(Plane plane, Path file) throws IOException {
        write(plane, List.of(), file);
    }

    /** @param cards further cards as they stand in the header, up to 80 characters each */
    public static void write(Plane plane, List<String> cards, Path file) throws IOException {
        StringBuilder header = new StringBuilder();
        card(header, "SIMPLE", "T");
        card(header, "BITPIX", "16");
        card(header, "NAXIS", "2");
        card(header, "NAXIS1", Integer.toString(plane.width()));
        card(header, "NAXIS2", Integer.toString(plane.height()));
        card(header, "BZERO", "32768");
        card(header, "BSCALE", "1");
        cards.forEach(card -> header.append(filled(card)));
        header.append(filled("END"));
        while (header.length() % 2880 != 0) {
            header.append(' ');
        }
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 20)) {
            out.write(header.toString().getBytes(StandardCharsets.US_ASCII));
            float[] row = new float[plane.width()];
            byte[] bytes = new byte[2 * plane.width()];
            for (int y = 0; y < plane.height(); y++) {
                plane.copyRow(0, y, row.length, row, 0);
                for (int x = 0; x < row.length; x++) {
                    int stored = Math.round(row[x]) - 32768;
                    bytes[2 * x] = (byte) (stored >> 8);
                    bytes[2 * x + 1] = (byte) stored;
                }
                out.write(bytes);
            }
            int rest = (int) ((long) bytes.length * plane.height() % 2880);
            out.write(new byte[rest == 0 ? 0 : 2880 - rest]);
        }
    }

    private static void card(StringBuilder header, String key, String value) {
        header.append(String.format(Locale.ROOT, "%-8s= %20s%50s", key, value, ""));
    }

    private static String filled(String card) {
        return String.format(Locale.ROOT, "%-80s", card);
    }
}
