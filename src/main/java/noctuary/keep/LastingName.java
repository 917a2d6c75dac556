package noctuary.keep;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.apache.commons.codec.digest.DigestUtils;

/**
 * A word that stands for a text in what outlives this program: measurements of thousands of frames are found again by
 * the next one as long as it names them alike. Of everything else {@link Digest} is quicker.
 */
public final class LastingName {
    private LastingName() {}

    /** SHA-256 of the number of its bytes, the last digits first, and of the text; hexadecimal. */
    public static String of(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        ByteBuffer all = ByteBuffer.allocate(Long.BYTES + bytes.length).order(ByteOrder.LITTLE_ENDIAN);
        all.putLong(bytes.length).put(bytes);
        return DigestUtils.sha256Hex(all.array());
    }
}
