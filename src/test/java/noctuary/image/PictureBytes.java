package noctuary.image;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** PNG and TIFF files put together from their standards. */
public final class PictureBytes {
    private static final int SHORT = 3;
    private static final int LONG = 4;

    private PictureBytes() {}

    /** @param colour type: 0 grey, 2 colour, 4 grey with alpha, 6 colour with alpha */
    static byte[] png(int width, int height, int bits, int colour, byte[][] rows) {
        ByteArrayOutputStream raw = new ByteArrayOutputStream();
        for (byte[] row : rows) {
            raw.write(0);
            raw.writeBytes(row);
        }
        ByteBuffer header = ByteBuffer.allocate(13).putInt(width).putInt(height);
        header.put((byte) bits).put((byte) colour);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(new byte[] {(byte) 137, 80, 78, 71, 13, 10, 26, 10});
        file.writeBytes(chunk("IHDR", header.array()));
        file.writeBytes(chunk("IDAT", deflated(raw.toByteArray())));
        file.writeBytes(chunk("IEND", new byte[0]));
        return file.toByteArray();
    }

    public static byte[] deflated(byte[] raw) {
        Deflater deflater = new Deflater();
        deflater.setInput(raw);
        deflater.finish();
        byte[] out = new byte[raw.length + 100];
        int length = deflater.deflate(out);
        deflater.end();
        return Arrays.copyOf(out, length);
    }

    public static byte[] chunk(String type, byte[] content) {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(content);
        return ByteBuffer.allocate(12 + content.length)
                .putInt(content.length)
                .put(name)
                .put(content)
                .putInt((int) crc.getValue())
                .array();
    }

    /**
     * Little-endian, uncompressed, chunky.
     *
     * @param format sample format: 1 unsigned, 3 floating point
     * @param extra for a fourth sample: 1 associated alpha, 2 unassociated
     */
    static byte[] tiff(
            int width, int height, int samples, int bits, int format, int extra, int rowsPerStrip, byte[] pixels) {
        int strips = (height + rowsPerStrip - 1) / rowsPerStrip;
        int stripBytes = rowsPerStrip * width * samples * bits / 8;
        int entries = samples == 4 ? 12 : 11;
        int lists = 8 + 2 + 12 * entries + 4;
        int bitsAt = lists;
        int formatsAt = bitsAt + 2 * samples;
        int offsetsAt = formatsAt + 2 * samples;
        int countsAt = offsetsAt + 4 * strips;
        int dataAt = countsAt + 4 * strips;
        ByteBuffer file = ByteBuffer.allocate(dataAt + pixels.length).order(ByteOrder.LITTLE_ENDIAN);
        file.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8).putShort((short) entries);
        entry(file, 256, LONG, 1, width);
        entry(file, 257, LONG, 1, height);
        entry(file, 258, SHORT, samples, samples <= 2 ? bits : bitsAt);
        entry(file, 259, SHORT, 1, 1);
        entry(file, 262, SHORT, 1, samples >= 3 ? 2 : 1);
        entry(file, 273, LONG, strips, strips == 1 ? dataAt : offsetsAt);
        entry(file, 277, SHORT, 1, samples);
        entry(file, 278, LONG, 1, rowsPerStrip);
        entry(file, 279, LONG, strips, strips == 1 ? pixels.length : countsAt);
        entry(file, 284, SHORT, 1, 1);
        if (samples == 4) {
            entry(file, 338, SHORT, 1, extra);
        }
        entry(file, 339, SHORT, samples, samples <= 2 ? format : formatsAt);
        file.putInt(0);
        for (int i = 0; i < samples; i++) {
            file.putShort(bitsAt + 2 * i, (short) bits).putShort(formatsAt + 2 * i, (short) format);
        }
        for (int i = 0; i < strips; i++) {
            file.putInt(offsetsAt + 4 * i, dataAt + i * stripBytes);
            file.putInt(countsAt + 4 * i, Math.min(stripBytes, pixels.length - i * stripBytes));
        }
        file.position(dataAt);
        return file.put(pixels).array();
    }

    private static void entry(ByteBuffer file, int tag, int type, int count, int value) {
        file.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }
}
