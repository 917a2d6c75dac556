package noctuary.fits;

import java.util.regex.Pattern;

/** Numbers as FITS writes them (FITS 4.0 sections 4.2.3 and 4.2.4), D exponents included. */
final class Numerals {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([EeDd][+-]?\\d+)?");

    private Numerals() {}

    /** NaN for text that is no number, and for numbers no double can hold. */
    static double parse(String text) {
        String number = text.strip();
        if (!NUMBER.matcher(number).matches()) {
            return Double.NaN;
        }
        double value = Double.parseDouble(number.replace('D', 'E').replace('d', 'e'));
        return Double.isFinite(value) ? value : Double.NaN;
    }

    static boolean isWhole(String text) {
        return text.strip().matches("[+-]?\\d+");
    }
}
