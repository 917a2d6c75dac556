package noctuary.image;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.LongStream;

/**
 * What the chunks of a PNG file say (PNG specification, third edition, 5 and 11), and where its pixels lie. Text and
 * colour profiles are passed over: they may be compressed, and unpacking them may fill any memory.
 *
 * @param colour type: 0 grey, 2 colour, 3 palette, 4 grey with alpha, 6 colour with alpha
 * @param palette red, green and blue of each colour; empty without
 * @param places of the compressed pixels
 * @param lengths of these
 */
record PngHeader(
        int width,
        int height,
        int bits,
        int colour,
        boolean interlaced,
        byte[] palette,
        boolean transparent,
        int orientation,
        long[] places,
        long[] lengths) {
    static final int PALETTE = 3;

    private static final byte[] SIGNATURE = {(byte) 137, 80, 78, 71, 13, 10, 26, 10};
    private static final int MOST_CHUNKS = 1 << 20;
    private static final int LONGEST_TAGS = 1 << 16;
    private static final int MOST_COLOURS = 256;

    static boolean begins(byte[] head) {
        return head.length >= SIGNATURE.length && Arrays.equals(Arrays.copyOf(head, SIGNATURE.length), SIGNATURE);
    }

    static PngHeader of(Bytes file) throws IOException {
        Reading reading = new Reading();
        long at = SIGNATURE.length;
        for (int n = 0; n < MOST_CHUNKS && !reading.over && at <= file.length() - 8; n++) {
            ByteBuffer head = ByteBuffer.wrap(file.read(at, 8));
            long length = head.getInt() & 0xFFFFFFFFL;
            String type = new String(head.array(), 4, 4, StandardCharsets.ISO_8859_1);
            reading.take(type, file, at + 8, length);
            at += 12 + length;
        }
        return reading.header();
    }

    boolean grey() {
        return colour == 0 || colour == 4;
    }

    /** Samples of a pixel as stored. */
    int samples() {
        return switch (colour) {
            case 2 -> 3;
            case 4 -> 2;
            case 6 -> 4;
            default -> 1;
        };
    }

    boolean sound() {
        return switch (colour) {
            case 0 -> bits == 1 || bits == 2 || bits == 4 || bits == 8 || bits == 16;
            case PALETTE -> (bits == 1 || bits == 2 || bits == 4 || bits == 8) && palette.length >= 3;
            case 2, 4, 6 -> bits == 8 || bits == 16;
            default -> false;
        };
    }

    /** What the chunks told so far. */
    private static final class Reading {
        private byte[] first;
        private byte[] palette = {};
        private boolean transparent;
        private int orientation = Upright.AS_STORED;
        private final LongStream.Builder places = LongStream.builder();
        private final LongStream.Builder lengths = LongStream.builder();
        private boolean over;

        void take(String type, Bytes file, long at, long length) throws IOException {
            switch (type) {
                case "IHDR" -> first = file.read(at, 13);
                case "PLTE" -> palette = file.read(at, (int) Math.min(3 * MOST_COLOURS, length));
                case "tRNS" -> transparent = true;
                case "eXIf" -> orientation = Exif.orientation(file.read(at, (int) Math.min(LONGEST_TAGS, length)));
                case "IDAT" -> {
                    places.add(at);
                    lengths.add(length);
                }
                case "IEND" -> over = true;
                default -> {}
            }
        }

        PngHeader header() throws IOException {
            if (first == null) {
                throw new IOException("its first part is missing");
            }
            ByteBuffer told = ByteBuffer.wrap(first);
            return new PngHeader(
                    told.getInt(),
                    told.getInt(),
                    told.get(),
                    told.get(),
                    first[12] != 0,
                    palette,
                    transparent,
                    orientation,
                    places.build().toArray(),
                    lengths.build().toArray());
        }
    }
}
