package noctuary.image;

import java.io.IOException;

/** Kinds of files that hold pictures, told by their first bytes. */
enum PictureFormat {
    PNG,
    JPEG,
    TIFF;

    private static final int HEAD = 8;

    static PictureFormat of(Bytes file) throws IOException, UnreadablePictureException {
        byte[] head = file.read(0, (int) Math.min(HEAD, file.length()));
        if (PngHeader.begins(head)) {
            return PNG;
        }
        if (JpegHeader.begins(head)) {
            return JPEG;
        }
        boolean tiff = head.length == HEAD
                && (head[0] == 'I' && head[1] == 'I' && (head[2] == 42 || head[2] == 43) && head[3] == 0
                        || head[0] == 'M' && head[1] == 'M' && head[2] == 0 && (head[3] == 42 || head[3] == 43));
        if (tiff) {
            return TIFF;
        }
        throw new UnreadablePictureException(
                "this is no PNG, JPEG or TIFF picture", "save the picture as PNG, JPEG or TIFF");
    }

    static int orientation(Bytes file) throws IOException, UnreadablePictureException {
        return switch (of(file)) {
            case PNG -> PngHeader.of(file).orientation();
            case JPEG -> JpegHeader.of(file).orientation();
            case TIFF -> Exif.orientation(TiffPicture.directory(file));
        };
    }

    static long memory(Bytes file) throws IOException, UnreadablePictureException {
        return switch (of(file)) {
            case PNG -> {
                PngHeader png = PngHeader.of(file);
                long planes = png.grey() ? 1 : 3;
                yield planes * (png.bits() == 16 ? 2 : 1) * png.width() * png.height();
            }
            case JPEG -> {
                JpegHeader jpeg = JpegHeader.of(file);
                yield (long) (jpeg.components() == 4 ? 7 : jpeg.components()) * jpeg.width() * jpeg.height();
            }
            case TIFF -> {
                TiffLayout tiff = TiffLayout.of(TiffPicture.directory(file));
                long planes = tiff.colours().samples() == 1 && tiff.colours() != TiffColours.PALETTE ? 1 : 3;
                yield planes * tiff.storedBits() / Byte.SIZE * tiff.width() * tiff.height();
            }
        };
    }
}
