package noctuary.fits;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sexagesimal text: parts separated by blanks, colons or unit letters, the sign before the first part. */
final class Angle {
    private static final Pattern PARTS = Pattern.compile("([+-]?)\\s*(\\d+(?:\\.\\d*)?)"
            + "(?:[\\s:hHdD°]+(\\d+(?:\\.\\d*)?)(?:[\\s:mM'′]+(\\d+(?:\\.\\d*)?))?)?[\\s:hHdDmMsS'\"°′″]*");

    private Angle() {}

    /**
     * The value in units of the first part, or the plain number; NaN for other text, and where a later part is not
     * below 60.
     */
    static double parse(String text) {
        double number = Numerals.parse(text);
        if (Double.isFinite(number)) {
            return number;
        }
        Matcher parts = PARTS.matcher(text.strip());
        if (!parts.matches()) {
            return Double.NaN;
        }
        double whole = Double.parseDouble(parts.group(2));
        double minutes = part(parts.group(3));
        double seconds = part(parts.group(4));
        double value = whole + minutes / 60 + seconds / 3600;
        boolean sixty = minutes >= 60 || seconds > 60;
        return sixty ? Double.NaN : parts.group(1).equals("-") ? -value : value;
    }

    private static double part(String group) {
        return group == null ? 0 : Double.parseDouble(group);
    }
}
