package noctuary.fits;

import java.util.Optional;

/**
 * From stored to physical values, {@code zero + scale * stored} (FITS 4.0 section 4.4.2.5).
 *
 * @param blank stored value that means no value, integers only
 */
record Scaling(double zero, double scale, Optional<Long> blank) {
    private static final double TWO_63 = 0x1p63;

    static Scaling of(CardIndex cards, int bitpix) {
        double scale = cards.number("BSCALE").map(Cited::value).orElse(1.0);
        double zero = cards.number("BZERO").map(Cited::value).orElse(0.0);
        if (scale == 0) {
            cards.odd("BSCALE", "BSCALE = 0 would make every pixel the same", "taken as 1");
            scale = 1;
        }
        return new Scaling(zero, scale, bitpix > 0 ? blank(cards) : Optional.empty());
    }

    private static Optional<Long> blank(CardIndex cards) {
        return cards.number("BLANK")
                .map(Cited::value)
                .filter(b -> b == Math.rint(b))
                .map(Double::longValue);
    }

    float physical(double stored) {
        return (float) (zero + scale * stored);
    }

    /**
     * Physical value of a 64-bit integer; the sum for unsigned ones is not exact in double, so the sign bit is flipped.
     */
    float physical(long stored) {
        if (blank.isPresent() && blank.get() == stored) {
            return Float.NaN;
        }
        if (zero == TWO_63 && scale == 1) {
            long unsigned = stored ^ Long.MIN_VALUE;
            return (float) (unsigned >= 0 ? unsigned : (unsigned >>> 1 | unsigned & 1) * 2.0);
        }
        return physical((double) stored);
    }

    boolean isIdentity() {
        return zero == 0 && scale == 1;
    }
}
