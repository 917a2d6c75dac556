package noctuary.journal;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import noctuary.image.PictureBytes;

/**
 * Pictures that carry what cameras and programs write beside the pixels: PNG 3rd edition (tEXt, zTXt, iTXt, tIME, eXIf,
 * iCCP), JPEG (APP1 with Exif or XMP, APP2 with a colour profile, COM), TIFF 6.0 (tags 270 to 33432), GIF89a comments.
 */
final class MarkedPictures {
    private MarkedPictures() {}

    static byte[] png(String marks) throws IOException {
        byte[] plain = written("png");
        int afterHeader = 8 + 25;
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(plain, 0, afterHeader);
        chunk(file, "iCCP", join(latin("zqname-profile\0\0"), PictureBytes.deflated(profile(marks))));
        chunk(file, "tEXt", latin("Author\0" + marks));
        chunk(file, "zTXt", join(latin("Comment\0\0"), PictureBytes.deflated(latin(marks))));
        chunk(file, "iTXt", latin("XML:com.adobe.xmp\0\0\0\0\0" + xmp(marks)));
        chunk(file, "tIME", new byte[] {7, (byte) 0xE9, 3, 14, 1, 59, 26});
        chunk(file, "eXIf", tiffTags(marks));
        file.write(plain, afterHeader, plain.length - afterHeader);
        return file.toByteArray();
    }

    static byte[] jpeg(String marks) throws IOException {
        byte[] plain = written("jpeg");
        int afterJfif = 2 + 2 + ((plain[4] & 255) << 8 | plain[5] & 255);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(plain, 0, afterJfif);
        segment(file, 0xE1, join(latin("Exif\0\0"), tiffTags(marks)));
        segment(file, 0xE1, latin("http://ns.adobe.com/xap/1.0/\0" + xmp(marks)));
        segment(file, 0xE2, join(latin("ICC_PROFILE\0"), new byte[] {1, 1}, profile(marks)));
        segment(file, 0xFE, latin(marks));
        file.write(plain, afterJfif, plain.length - afterJfif);
        return file.toByteArray();
    }

    static byte[] gif(String marks) throws IOException {
        byte[] plain = written("gif");
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(plain, 0, plain.length - 1);
        byte[] text = latin(marks);
        file.writeBytes(new byte[] {0x21, (byte) 0xFE, (byte) text.length});
        file.writeBytes(text);
        file.writeBytes(new byte[] {0, 0x3B});
        return file.toByteArray();
    }

    /** One strip of grey, with description, maker, host, artist and copyright. */
    static byte[] tiff(String marks) {
        byte[] pixels = new byte[40 * 30];
        new Random(5).nextBytes(pixels);
        byte[] tags = tiffTags(marks, 40, 30, pixels.length);
        return join(tags, pixels);
    }

    private static byte[] tiffTags(String marks) {
        return tiffTags(marks, 0, 0, 0);
    }

    private static byte[] tiffTags(String marks, int width, int height, int bytes) {
        int[] texts = {270, 271, 305, 315, 316, 33432};
        int[][] numbers = width == 0
                ? new int[0][]
                : new int[][] {
                    {256, width}, {257, height}, {258, 8}, {259, 1}, {262, 1}, {277, 1}, {278, height}, {279, bytes}
                };
        int count = texts.length + numbers.length + (width == 0 ? 0 : 1);
        byte[] text = latin(marks + "\0");
        int textAt = 8 + 2 + 12 * count + 4;
        ByteBuffer out = ByteBuffer.allocate(textAt + text.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put(latin("II")).putShort((short) 42).putInt(8).putShort((short) count);
        int[] tags = Arrays.copyOf(texts, count);
        for (int i = 0; i < numbers.length; i++) {
            tags[texts.length + i] = numbers[i][0];
        }
        if (width > 0) {
            tags[count - 1] = 273;
        }
        Arrays.sort(tags);
        for (int tag : tags) {
            boolean isText = Arrays.binarySearch(texts, tag) >= 0;
            int value = tag == 273 ? textAt + text.length : isText ? textAt : number(numbers, tag);
            out.putShort((short) tag).putShort((short) (isText ? 2 : 4)).putInt(isText ? text.length : 1);
            out.putInt(value);
        }
        return out.putInt(0).put(text).array();
    }

    private static int number(int[][] numbers, int tag) {
        return Arrays.stream(numbers).filter(n -> n[0] == tag).findFirst().orElseThrow()[1];
    }

    private static String xmp(String marks) {
        return "<x:xmpmeta xmlns:x='adobe:ns:meta/'><exif:GPSLatitude>" + marks + "</exif:GPSLatitude></x:xmpmeta>";
    }

    /** A wide colour space whose copyright text is ours: decoders keep such a profile with the pixels. */
    private static byte[] profile(String marks) {
        byte[] profile = ((ICC_ColorSpace) ColorSpace.getInstance(ColorSpace.CS_LINEAR_RGB))
                .getProfile()
                .getData();
        byte[] text = latin(marks);
        ICC_Profile copy = ICC_Profile.getInstance(profile);
        byte[] tag = join(latin("text\0\0\0\0"), text, new byte[1]);
        copy.setData(ICC_Profile.icSigCopyrightTag, tag);
        return copy.getData();
    }

    private static byte[] written(String format) throws IOException {
        BufferedImage image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(3);
        for (int y = 0; y < 48; y++) {
            for (int x = 0; x < 64; x++) {
                image.setRGB(x, y, random.nextInt(1 << 24));
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    private static void segment(ByteArrayOutputStream out, int marker, byte[] content) {
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) marker});
        out.writeBytes(new byte[] {(byte) (content.length + 2 >> 8), (byte) (content.length + 2)});
        out.writeBytes(content);
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] content) {
        out.writeBytes(PictureBytes.chunk(type, content));
    }

    private static byte[] join(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        Arrays.stream(parts).forEach(all::writeBytes);
        return all.toByteArray();
    }

    private static byte[] latin(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
