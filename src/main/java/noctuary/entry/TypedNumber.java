package noctuary.entry;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and what stands behind it, such as {@code 56.2} and {@code mm}.
 *
 * @param unit as typed, empty for a bare number
 */
record TypedNumber(BigDecimal value, String unit) {
    /** Beyond it nothing of this trade is measured, in any unit, and products of such numbers come to an end. */
    private static final BigDecimal LARGEST = new BigDecimal("1e12");

    private static final BigDecimal SMALLEST = new BigDecimal("1e-12");
    private static final String DIGITS = "\\d{1,20}(?:\\.\\d{1,20})?|\\.\\d{1,20}";
    private static final Pattern NUMBER =
            Pattern.compile("([+\\-−–]?)\\s?(" + DIGITS + ")([eE][+\\-−]?\\d{1,2}(?![\\d.]))?[\\s\\h]*(.*)");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:[\\h',’.]\\d{3})+(?:[.,]\\d+)?(?![\\d]).*");
    private static final Pattern COMMA = Pattern.compile("[+\\-−–]?\\d+,\\d+(?:\\h.*|\\D.*|$)");

    static TypedNumber of(String text) throws Unfit {
        refuseCommas(text);
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.matches()) {
            throw new Unfit("a number is expected here, not " + Margin.quoted(text), "write a number such as 56.2");
        }
        String rest = matcher.group(4).strip();
        if (!rest.isEmpty() && Character.isDigit(rest.charAt(0)) || rest.startsWith(".")) {
            throw new Unfit(Margin.quoted(text) + " is not one number", "write digits without spaces between them");
        }
        String exponent = matcher.group(3) == null ? "" : matcher.group(3).replace('−', '-');
        var value = new BigDecimal(matcher.group(2) + exponent);
        if (value.compareTo(LARGEST) > 0 || value.signum() != 0 && value.compareTo(SMALLEST) < 0) {
            throw new Unfit(Margin.quoted(text) + " is beyond anything that is measured here", "check the number");
        }
        boolean negative = !matcher.group(1).isEmpty() && !matcher.group(1).equals("+");
        return new TypedNumber(negative ? value.negate() : value, rest);
    }

    private static void refuseCommas(String text) throws Unfit {
        boolean grouped = GROUPED.matcher(text).matches() && !text.matches("\\d{1,3}\\.\\d+.*");
        boolean comma = COMMA.matcher(text).matches();
        if (grouped && comma) {
            throw new Unfit(
                    Margin.quoted(text) + " has a comma, which may mean two things",
                    "write " + text.replaceFirst(",", ".") + " or " + text.replaceFirst(",", ""));
        }
        if (comma) {
            throw new Unfit(
                    Margin.quoted(text) + " has a decimal comma",
                    "write it with a point: " + text.replaceFirst(",", "."));
        }
        if (grouped) {
            throw new Unfit(
                    Margin.quoted(text) + " has separators between thousands",
                    "write the digits without them: " + text.replaceAll("(?<=\\d)[\\h',’](?=\\d{3})", ""));
        }
    }
}
