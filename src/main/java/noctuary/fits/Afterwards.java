package noctuary.fits;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Looks at what follows the image: another unit, nothing, or something that does not belong there. */
final class Afterwards {
    private static final String HINT = "the image itself is whole; copy the file again if that is unexpected";

    private Afterwards() {}

    static List<FrameHeader.Oddity> look(ByteSource source, long missingPadding) {
        if (missingPadding > 0) {
            return List.of(new FrameHeader.Oddity(
                    "END", "the file ends " + missingPadding + " bytes before its last block does", HINT));
        }
        try {
            ByteBuffer next = source.next(HduScanner.BLOCK);
            String text = StandardCharsets.ISO_8859_1.decode(next).toString();
            if (text.isEmpty() || text.startsWith("XTENSION") || text.isBlank()) {
                return List.of();
            }
            return List.of(new FrameHeader.Oddity("END", "something that is no FITS follows the image", HINT));
        } catch (IOException e) {
            return List.of(new FrameHeader.Oddity(
                    "END", "the gzip packing is damaged after the image, or its check sum is wrong", HINT));
        }
    }
}
