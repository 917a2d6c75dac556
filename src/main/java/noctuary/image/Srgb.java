package noctuary.image;

/** The transfer curve of sRGB (IEC 61966-2-1) between linear light and the encoded value, both 0 to 1. */
public final class Srgb {
    private Srgb() {}

    public static double encode(double linear) {
        return linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
    }

    public static double decode(double encoded) {
        return encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
    }
}
