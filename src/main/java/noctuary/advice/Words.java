package noctuary.advice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import noctuary.fact.Printed;

/** Numbers and lists as the sentences of this room write them. */
final class Words {
    private Words() {}

    /** The sentence with its words filled in, each for a {@code %s}. */
    static String say(String sentence, Object... words) {
        return String.format(Locale.ROOT, sentence, words);
    }

    static String fixed(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .toPlainString()
                .replace('-', '\u2212');
    }

    static String arcsec(double value) {
        return fixed(value, 2) + " arcsec";
    }

    static String px(double value) {
        return fixed(value, 2) + " px";
    }

    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    /** Three significant digits and a unit. */
    static String amount(double value, String unit) {
        return significant(value) + " " + unit;
    }

    static String significant(double value) {
        int digits = value == 0 ? 0 : 2 - (int) Math.floor(Math.log10(Math.abs(value)));
        return Printed.number(BigDecimal.valueOf(value)
                .setScale(digits, RoundingMode.HALF_EVEN)
                .doubleValue());
    }

    /** As {@code 4.2 h}, {@code 36 min} or {@code 90 s}. */
    static String time(double seconds) {
        if (seconds < 120) {
            return (seconds < 10 ? significant(seconds) : Long.toString(Math.round(seconds))) + " s";
        }
        return seconds < 5400
                ? Math.round(seconds / 60) + " min"
                : fixed(seconds / 3600, seconds < 36000 ? 1 : 0) + " h";
    }

    static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /** "a", "a and b", "a, b and c". */
    static String list(List<String> items) {
        int last = items.size() - 1;
        return last < 1
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }
}
