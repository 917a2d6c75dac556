package noctuary.image;

/** What is not read of TIFF, in words. */
final class TiffLimits {
    private TiffLimits() {}

    static void require(TiffLayout layout) throws UnreadablePictureException {
        if (!layout.saneBlocks()) {
            throw PictureFile.damaged(
                    "its pieces claim " + layout.blockWidth() + " x " + layout.blockHeight() + " pixels");
        }
        int bits = layout.bits();
        boolean known = layout.floating()
                ? bits == 16 || bits == 32 || bits == 64
                : bits == 1 || bits == 2 || bits == 4 || bits == 8 || bits == 16 || bits == 32;
        if (!known) {
            throw new UnreadablePictureException(
                    "the picture has " + bits
                            + (layout.floating() ? " bits a floating point sample" : " bits a sample"),
                    "save it with 16 or 32 bits a sample");
        }
        if (!predictable(layout) || layout.lightestBitFirst() && !reversible(layout.compression())) {
            throw new UnreadablePictureException(
                    "the picture is compressed in a way that cannot be read here",
                    "save it uncompressed, or with LZW or Deflate");
        }
        boolean plainInks = bits == 8 || bits == 16;
        boolean odd = switch (layout.colours()) {
            case WHITE_IS_ZERO -> layout.floating();
            case PALETTE -> layout.floating() || bits > 16;
            case INKS -> layout.floating() || !plainInks;
            case LUMA -> layout.compression() != TiffCompression.JPEG || layout.planar();
            case GREY, RGB -> false;
        };
        if (odd || layout.compression() == TiffCompression.JPEG && bits != 8) {
            throw new UnreadablePictureException(
                    "the picture's colours are stored in a way that cannot be read here", "save it as RGB or grey");
        }
    }

    private static boolean predictable(TiffLayout layout) {
        return switch (layout.predictor()) {
            case 1 -> true;
            case 2 -> layout.bits() == 8 || layout.bits() == 16 || layout.bits() == 32;
            case 3 -> layout.floating();
            default -> false;
        };
    }

    private static boolean reversible(TiffCompression compression) {
        return compression != TiffCompression.JPEG && compression != TiffCompression.DEFLATE;
    }
}
