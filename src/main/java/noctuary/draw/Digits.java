package noctuary.draw;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, the same in every locale; halves are rounded away from zero. */
public final class Digits {
    private static final char MINUS = '\u2212';
    private static final char THIN_SPACE = '\u202f';

    private static final double LARGE = 1e9;

    private static final double NEAR_HALF = 1e-6;

    private Digits() {}

    /**
     * Whether {@code Math.round} gives what rounding of the decimal number gives that stands for the value.
     *
     * @param scaled the value's amount in units of its last place; it may be not a number
     */
    public static boolean roundsAlike(double scaled) {
        return scaled < LARGE && Math.abs(scaled - Math.floor(scaled) - 0.5) > NEAR_HALF;
    }

    /** Whether a quantity is there to be drawn: above zero and finite. */
    static boolean isPositive(double value) {
        return value > 0 && value < Double.POSITIVE_INFINITY;
    }

    /** A coordinate: at most two decimals, no trailing zeros, no negative zero. */
    static String coordinate(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a coordinate must be finite, not " + value);
        }
        double hundredths = Math.abs(value) * 100;
        if (roundsAlike(hundredths)) {
            return coordinate(value < 0, Math.round(hundredths));
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String coordinate(boolean negative, long hundredths) {
        String sign = negative && hundredths > 0 ? "-" : "";
        long cents = hundredths % 100;
        String whole = sign + hundredths / 100;
        if (cents == 0) {
            return whole;
        }
        return whole + (cents < 10 ? ".0" : ".") + (cents % 10 == 0 ? cents / 10 : cents);
    }

    /** A number for the reader with fixed decimals, a true minus sign and thousands set apart from 10 000 on. */
    static String fixed(double value, int decimals) {
        return forReader(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
    }

    /** A number for the reader with so many significant figures, zeros at the end kept. */
    static String significant(double value, int figures) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(figures, RoundingMode.HALF_UP));
        int decimals = Math.max(0, figures - rounded.precision() + rounded.scale());
        return forReader(rounded.setScale(decimals, RoundingMode.HALF_UP));
    }

    /** With a plus or minus sign; zero after rounding has none. */
    static String signed(double value, int decimals) {
        String text = fixed(value, decimals);
        boolean plus = BigDecimal.valueOf(value)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .signum()
                > 0;
        return plus ? "+" + text : text;
    }

    /** A span of time: minutes below one hour, then hours with one decimal below 100. */
    static String hours(double hours) {
        long minutes = Math.round(hours * 60);
        if (Math.abs(minutes) < 60) {
            return fixed(minutes, 0) + " min";
        }
        return fixed(hours, Math.abs(hours) < 99.95 ? 1 : 0) + " h";
    }

    private static String forReader(BigDecimal value) {
        String digits = value.abs().toPlainString();
        int point = digits.indexOf('.');
        int end = point < 0 ? digits.length() : point;
        StringBuilder text = new StringBuilder(digits);
        for (int i = end - 3; i > 0 && end > 4; i -= 3) {
            text.insert(i, THIN_SPACE);
        }
        return value.signum() < 0 ? MINUS + text.toString() : text.toString();
    }
}
