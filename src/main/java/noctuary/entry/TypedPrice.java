package noctuary.entry;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** An amount with an ISO 4217 currency code, such as {@code 640 EUR}. */
record TypedPrice(BigDecimal amount, String currency) {
    private static final Pattern SIGN = Pattern.compile("(.*)\\p{Sc}(.*)");
    private static final Pattern CODE = Pattern.compile("[A-Z]{3}");

    static TypedPrice of(String text) throws Unfit {
        if (SIGN.matcher(text).matches()) {
            throw new Unfit(
                    Margin.quoted(text) + " names no currency for certain",
                    "write the currency's three letters behind the amount, such as 640 EUR");
        }
        TypedNumber number = TypedNumber.of(text);
        if (number.value().signum() < 0) {
            throw new Unfit(Margin.quoted(text) + " must not be negative", "check the number");
        }
        return new TypedPrice(number.value(), code(number.unit(), text));
    }

    private static String code(String typed, String text) throws Unfit {
        if (typed.isEmpty()) {
            throw new Unfit(
                    "a price needs a currency, and " + Margin.quoted(text) + " has none",
                    "write its three letters, such as " + text.strip() + " EUR");
        }
        List<String> codes = Currency.getAvailableCurrencies().stream()
                .map(Currency::getCurrencyCode)
                .sorted()
                .toList();
        if (!CODE.matcher(typed).matches() || !codes.contains(typed)) {
            boolean letters = typed.length() == 3 && codes.contains(typed.toUpperCase(Locale.ROOT));
            throw new Unfit(
                    "unknown currency " + Margin.quoted(typed),
                    letters
                            ? "did you mean " + Margin.quoted(typed.toUpperCase(Locale.ROOT)) + "?"
                            : "write the three letters of ISO 4217, such as EUR");
        }
        return typed;
    }
}
