package noctuary.image;

import java.io.IOException;

/** What cameras and programs say beside the pixels (Exif 2.3); only which side is up is read. */
final class Exif {
    private static final int ORIENTATION = 274;

    private Exif() {}

    /** The orientation that such a block tells; as stored where it tells none or is damaged. */
    static int orientation(byte[] tags) {
        try {
            var first = TiffDirectory.first(Bytes.of(tags));
            return first.isEmpty() ? Upright.AS_STORED : orientation(first.get());
        } catch (IOException e) {
            return Upright.AS_STORED;
        }
    }

    static int orientation(TiffDirectory tags) throws IOException {
        return (int) tags.number(ORIENTATION, Upright.AS_STORED);
    }
}
