package noctuary.image;

/** Floating point numbers of 16 bits (IEEE 754-2008, binary16). */
final class HalfFloat {
    private HalfFloat() {}

    static float of(int bits) {
        int exponent = bits >> 10 & 31;
        int fraction = bits & 1023;
        float sign = (bits & 0x8000) == 0 ? 1 : -1;
        if (exponent == 31) {
            return fraction == 0 ? sign * Float.POSITIVE_INFINITY : Float.NaN;
        }
        return sign * (exponent == 0 ? fraction * 0x1p-24f : Math.scalb(1024f + fraction, exponent - 25));
    }
}
