package noctuary.site;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names as a reader sorts them: numbers by their value, so that M 13 stands before M 101; capitals do not count. */
final class ByName implements Comparator<String> {
    static final Comparator<String> ORDER = new ByName().thenComparing(Comparator.naturalOrder());

    private static final Pattern PIECE = Pattern.compile("[0-9]+|[^0-9]+");

    private ByName() {}

    @Override
    public int compare(String a, String b) {
        Matcher left = PIECE.matcher(a);
        Matcher right = PIECE.matcher(b);
        int order = 0;
        while (order == 0) {
            boolean more = left.find();
            if (more != right.find()) {
                return more ? 1 : -1;
            }
            if (!more) {
                return 0;
            }
            order = piece(left.group(), right.group());
        }
        return order;
    }

    private static int piece(String a, String b) {
        return isNumber(a) && isNumber(b) ? new BigInteger(a).compareTo(new BigInteger(b)) : a.compareToIgnoreCase(b);
    }

    private static boolean isNumber(String piece) {
        return piece.charAt(0) >= '0' && piece.charAt(0) <= '9';
    }
}
