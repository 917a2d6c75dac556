package noctuary.image;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** The smallest colour profile of cyan, magenta, yellow and black: header, one table (ICC.1:2022, 7.2, 7.3, 10.11). */
final class InkProfile {
    private static final int HEAD = 128;
    private static final int TAGS = 4 + 12;
    private static final int TABLE = 48 + 4 * 256 + 16 * 3 + 3 * 256;

    private InkProfile() {}

    /** Black ink gives L* 0, without it each of the colours takes half of what is there: 100, 50, 25, 12.5. */
    static byte[] greys() {
        ByteBuffer out = ByteBuffer.allocate(HEAD + TAGS + TABLE);
        header(out);
        out.position(HEAD);
        out.putInt(1).put(ascii("A2B0")).putInt(HEAD + TAGS).putInt(TABLE);
        out.put(ascii("mft1"))
                .putInt(0)
                .put((byte) 4)
                .put((byte) 3)
                .put((byte) 2)
                .put((byte) 0);
        for (int i = 0; i < 9; i++) {
            out.putInt(i % 4 == 0 ? 0x10000 : 0);
        }
        ramps(out, 4);
        for (int mixture = 0; mixture < 16; mixture++) {
            int colours = Integer.bitCount(mixture >> 1);
            double lightness = (mixture & 1) == 1 ? 0 : 100 / Math.pow(2, colours);
            out.put((byte) Math.round(lightness * 2.55)).put((byte) 128).put((byte) 128);
        }
        ramps(out, 3);
        return out.array();
    }

    private static void header(ByteBuffer out) {
        out.putInt(0, out.capacity()).putInt(8, 0x02400000);
        out.position(12);
        out.put(ascii("prtrCMYKLab "));
        out.position(36);
        out.put(ascii("acsp"));
        out.putInt(68, 0xF6D6).putInt(72, 0x10000).putInt(76, 0xD32D);
    }

    private static void ramps(ByteBuffer out, int count) {
        for (int i = 0; i < count * 256; i++) {
            out.put((byte) i);
        }
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
