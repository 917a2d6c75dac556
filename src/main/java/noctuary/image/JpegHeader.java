package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a JPEG file says before its pixels (ITU-T T.81, annex B; Exif 2.3, 4.7.2; ICC.1:2022, annex B.4).
 *
 * @param process last digit of the frame's marker: 0 baseline, 1 extended, 2 progressive
 * @param bits a sample
 * @param inverted whether a maker's mark says that inks are stored upside down, as is common practice
 * @param transform how colours were turned, by the same mark: 0 not, 1 and 2 into brightness and differences
 * @param profiles where the parts of a colour profile begin, by their number, and where they end
 */
record JpegHeader(
        int width,
        int height,
        int components,
        int bits,
        int process,
        int orientation,
        boolean inverted,
        int transform,
        Map<Integer, long[]> profiles) {
    private static final int START = 0xFFD8;
    private static final int APP1 = 0xE1;
    private static final int APP2 = 0xE2;
    private static final int APP14 = 0xEE;
    private static final int SCAN = 0xDA;
    private static final int END = 0xD9;
    private static final int MOST_SEGMENTS = 4096;
    private static final byte[] PROFILE = latin("ICC_PROFILE\0");
    private static final byte[] EXIF = latin("Exif\0\0");
    private static final byte[] MAKER = latin("Adobe");

    static boolean begins(byte[] head) {
        return head.length > 2 && (head[0] & 255) == START >> 8 && (head[1] & 255) == (START & 255) && head[2] == -1;
    }

    static JpegHeader of(Bytes file) throws IOException {
        Reading reading = new Reading();
        long at = 2;
        for (int n = 0; n < MOST_SEGMENTS; n++) {
            byte[] head = file.read(at, 4);
            int marker = head[1] & 255;
            if (head[0] != -1) {
                throw new IOException("it makes no sense before its pixels");
            }
            if (marker == 0xFF) {
                at++;
                continue;
            }
            if (marker == SCAN || marker == END) {
                break;
            }
            int length = (head[2] & 255) << 8 | head[3] & 255;
            reading.take(marker, file, at + 4, length - 2);
            at += 2 + length;
        }
        if (reading.frame == null) {
            throw new EOFException();
        }
        return reading.header();
    }

    /** The joined parts of the colour profile; empty without. */
    byte[] profile(Bytes file) throws IOException {
        byte[] whole = {};
        for (long[] part : profiles.values()) {
            int length = (int) (part[1] - part[0]) - PROFILE.length - 2;
            if (length > 0) {
                int from = whole.length;
                whole = Arrays.copyOf(whole, from + length);
                System.arraycopy(file.read(part[0] + PROFILE.length + 2, length), 0, whole, from, length);
            }
        }
        return whole;
    }

    private static byte[] latin(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    /** What the segments told so far. */
    private static final class Reading {
        private byte[] frame;
        private int process;
        private int orientation = Upright.AS_STORED;
        private boolean inverted;
        private int transform;
        private final Map<Integer, long[]> profiles = new TreeMap<>();

        void take(int marker, Bytes file, long at, int length) throws IOException {
            if (length < 0) {
                throw new IOException("it makes no sense before its pixels");
            }
            byte[] start = file.read(at, Math.min(length, 16));
            if (marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC) {
                frame = start;
                process = marker & 15;
            } else if (marker == APP1 && starts(start, EXIF)) {
                orientation = Exif.orientation(file.read(at + EXIF.length, length - EXIF.length));
            } else if (marker == APP2 && starts(start, PROFILE)) {
                profiles.put(
                        profiles.size() + (start.length > 12 ? start[12] & 255 : 0) * MOST_SEGMENTS,
                        new long[] {at, at + length});
            } else if (marker == APP14 && starts(start, MAKER)) {
                inverted = true;
                transform = start.length > 11 ? start[11] & 255 : 0;
            }
        }

        private static boolean starts(byte[] bytes, byte[] with) {
            return bytes.length >= with.length && Arrays.equals(Arrays.copyOf(bytes, with.length), with);
        }

        JpegHeader header() throws EOFException {
            if (frame.length < 6) {
                throw new EOFException();
            }
            int height = (frame[1] & 255) << 8 | frame[2] & 255;
            int width = (frame[3] & 255) << 8 | frame[4] & 255;
            return new JpegHeader(
                    width, height, frame[5] & 255, frame[0] & 255, process, orientation, inverted, transform, profiles);
        }
    }
}
