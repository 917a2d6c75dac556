package noctuary.image;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.stream.ImageInputStream;

/** Hides the colour profile of a JPEG file, which ImageIO would apply to the stored numbers (ICC.1:2022, annex B.4). */
final class JpegProfile {
    private static final int START = 0xFFD8;
    private static final int APP2 = 0xFFE2;
    private static final int SCAN = 0xFFDA;
    private static final byte[] NAME = "ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII);

    private JpegProfile() {}

    /** Bytes to change so that the profile's segments bear another name; the stream is left at its start. */
    static Map<Long, Byte> hidden(ImageInputStream in) throws IOException {
        Map<Long, Byte> changes = new TreeMap<>();
        try {
            if (in.length() < 4 || in.readUnsignedShort() != START) {
                return changes;
            }
            while (in.getStreamPosition() + 4 + NAME.length < in.length()) {
                int marker = in.readUnsignedShort();
                long segment = in.getStreamPosition();
                int length = in.readUnsignedShort();
                if (marker >> 8 != 0xFF || marker == SCAN || length < 2) {
                    break;
                }
                if (marker == APP2 && named(in)) {
                    changes.put(segment + 2, (byte) '-');
                }
                in.seek(segment + length);
            }
            return changes;
        } finally {
            in.seek(0);
        }
    }

    private static boolean named(ImageInputStream in) throws IOException {
        byte[] name = new byte[NAME.length];
        in.readFully(name);
        return Arrays.equals(name, NAME);
    }
}
