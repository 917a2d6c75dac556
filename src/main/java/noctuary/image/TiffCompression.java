package noctuary.image;

import java.io.InputStream;
import java.util.Optional;
import java.util.zip.InflaterInputStream;

/** How the pixels of a TIFF file are packed (TIFF 6.0, tag 259; technical note 2; Deflate as registered since). */
enum TiffCompression {
    NONE(1, 1),
    LZW(5, 4096),
    JPEG(7, 4096),
    DEFLATE(8, 1100),
    PACK_BITS(32773, 64);

    private static final int FORMER_DEFLATE = 32946;

    private final int code;
    private final int mostRatio;

    TiffCompression(int code, int mostRatio) {
        this.code = code;
        this.mostRatio = mostRatio;
    }

    static TiffCompression of(long code) throws UnreadablePictureException {
        for (TiffCompression known : values()) {
            if (known.code == code || known == DEFLATE && code == FORMER_DEFLATE) {
                return known;
            }
        }
        throw new UnreadablePictureException(
                "the picture is compressed by " + name(code).orElse("method " + code) + ", which is not read here",
                "save it uncompressed, or with LZW or Deflate");
    }

    private static Optional<String> name(long code) {
        return switch ((int) code) {
            case 2, 3, 4 -> Optional.of("a method for fax");
            case 6 -> Optional.of("the former kind of JPEG");
            case 34712 -> Optional.of("JPEG 2000");
            case 34925 -> Optional.of("LZMA");
            case 50000 -> Optional.of("Zstandard");
            case 50001 -> Optional.of("WebP");
            default -> Optional.empty();
        };
    }

    /** Bytes that one packed byte can give at most. */
    int mostRatio() {
        return mostRatio;
    }

    InputStream open(InputStream packed) {
        return switch (this) {
            case LZW -> new LzwStream(packed);
            case DEFLATE -> new InflaterInputStream(packed);
            case PACK_BITS -> new PackBitsStream(packed);
            case NONE, JPEG -> packed;
        };
    }
}
