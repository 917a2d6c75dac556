package noctuary.rig;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/** Numbers and lists as the checks' sentences write them. */
final class Words {
    private Words() {}

    /** The sentence with its words filled in, each for a {@code %s}. */
    static String say(String sentence, Object... words) {
        return String.format(Locale.ROOT, sentence, words);
    }

    /** Rounded to that many decimals, without trailing zeros. */
    static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String mm(double value) {
        return number(value, 2) + " mm";
    }

    static String kg(double value) {
        return number(value, 2) + " kg";
    }

    /** "a", "a and b", "a, b and c". */
    static String list(List<String> items) {
        int last = items.size() - 1;
        return last < 1
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }
}
