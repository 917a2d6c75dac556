package noctuary.fits;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;

/** Writes small FITS files card by card, for tests. */
final class FitsBytes {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    /** A card whose text is given as it stands, cut or filled to 80 bytes of Latin-1. */
    FitsBytes card(String text) {
        out.writeBytes(String.format(Locale.ROOT, "%-80.80s", text).getBytes(StandardCharsets.ISO_8859_1));
        return this;
    }

    /** A card in fixed format, the value ending in column 30. */
    FitsBytes card(String keyword, Object value) {
        return card(String.format(Locale.ROOT, "%-8s= %20s", keyword, value));
    }

    FitsBytes primary(int bitpix, int... axes) {
        return card("SIMPLE", "T").structure(bitpix, axes);
    }

    FitsBytes extension(int bitpix, int... axes) {
        return card("XTENSION= 'IMAGE   '")
                .structure(bitpix, axes)
                .card("PCOUNT", 0)
                .card("GCOUNT", 1);
    }

    private FitsBytes structure(int bitpix, int... axes) {
        card("BITPIX", bitpix).card("NAXIS", axes.length);
        for (int i = 0; i < axes.length; i++) {
            card("NAXIS" + (i + 1), axes[i]);
        }
        return this;
    }

    FitsBytes end() {
        card("END");
        return pad(' ');
    }

    FitsBytes data(byte[] data) {
        out.writeBytes(data);
        return pad(0);
    }

    FitsBytes shorts(int... values) {
        ByteBuffer buffer = ByteBuffer.allocate(values.length * 2);
        for (int value : values) {
            buffer.putShort((short) value);
        }
        return data(buffer.array());
    }

    private FitsBytes pad(int with) {
        while (out.size() % 2880 != 0) {
            out.write(with);
        }
        return this;
    }

    byte[] bytes() {
        return out.toByteArray();
    }

    Path write(Path file) throws IOException {
        return Files.write(file, bytes());
    }

    Path gzip(Path file) throws IOException {
        try (GZIPOutputStream packed = new GZIPOutputStream(Files.newOutputStream(file))) {
            packed.write(bytes());
        }
        return file;
    }

    /** What a header of these cards says of an image of 100 x 80. */
    static FrameHeader header(String... cards) {
        List<String> records = Arrays.stream(cards)
                .map(card -> String.format(Locale.ROOT, "%-80.80s", card))
                .toList();
        return FrameHeader.of(CardReader.read(records).cards(), 100, 80);
    }
}
