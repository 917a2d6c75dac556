package noctuary.entry;

import java.math.BigDecimal;
import java.net.URI;
import java.net.URISyntaxException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;

/** How plain values are typed: text, dates, yes and no, whole numbers, factors. */
final class Forms {
    private static final Pattern ISO_DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern RUN_TOGETHER = Pattern.compile("(\\d{4})(\\d{2})(\\d{2})");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
    private static final List<String> MOSAICS = List.of("RGGB", "BGGR", "GRBG", "GBRG");
    private static final int LARGEST = 1_000_000;
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    private Forms() {}

    static String text(String text) {
        return text;
    }

    static LocalDate date(String text) throws Unfit {
        if (!ISO_DATE.matcher(text).matches()) {
            throw new Unfit(Margin.quoted(text) + " is not a date", "write " + suggestion(text));
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new Unfit("there is no day " + Margin.quoted(text), "write year-month-day, such as 2025-05-20");
        }
    }

    /** A date on which pictures can have been taken. */
    static LocalDate night(String text) throws Unfit {
        LocalDate date = date(text);
        if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
            throw new Unfit("no picture was taken on " + Margin.quoted(text), "check the year");
        }
        return date;
    }

    private static String suggestion(String text) {
        for (Pattern pattern : List.of(RUN_TOGETHER, YEAR_FIRST)) {
            Matcher matcher = pattern.matcher(text);
            if (matcher.matches()) {
                return matcher.group(1) + "-" + twoDigits(matcher.group(2)) + "-" + twoDigits(matcher.group(3));
            }
        }
        return "year-month-day, such as 2025-05-20";
    }

    private static String twoDigits(String number) {
        return number.length() == 1 ? "0" + number : number;
    }

    static boolean yesOrNo(String text) throws Unfit {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "true", "on" -> true;
            case "no", "false", "off" -> false;
            default -> throw new Unfit("yes or no is expected here, not " + Margin.quoted(text), "write yes or no");
        };
    }

    /** From 1 to a million. */
    static int count(String text) throws Unfit {
        TypedNumber number = TypedNumber.of(text);
        boolean whole = number.value().stripTrailingZeros().scale() <= 0;
        boolean fits = number.value().signum() > 0 && number.value().compareTo(BigDecimal.valueOf(LARGEST)) <= 0;
        if (!number.unit().isEmpty() || !whole || !fits) {
            throw new Unfit("a whole number is expected here, not " + Margin.quoted(text), "write digits, such as 48");
        }
        return number.value().intValueExact();
    }

    /** A count of pixels, bare or with {@code px}. */
    static Quantity pixels(String text) throws Unfit {
        return Quantity.of(count(text.replaceFirst("\\h*px$", "")), Unit.NONE);
    }

    /** A factor above zero, without a unit. */
    static Quantity factor(String text) throws Unfit {
        TypedNumber number = TypedNumber.of(text);
        if (!number.unit().isEmpty() || number.value().signum() <= 0) {
            throw new Unfit(
                    "a factor above zero without a unit is expected here, not " + Margin.quoted(text),
                    "write a number such as 0.95");
        }
        return Quantity.of(number.value().doubleValue(), Unit.NONE);
    }

    static String mosaic(String text) throws Unfit {
        String pattern = text.toUpperCase(Locale.ROOT);
        if (!MOSAICS.contains(pattern)) {
            throw new Unfit(
                    "unknown mosaic " + Margin.quoted(text),
                    "write one of " + String.join(", ", MOSAICS) + ", or leave the key out for a monochrome sensor");
        }
        return pattern;
    }

    /** A folder of the web, ending in a slash, without anything behind it. */
    static URI webFolder(String text) throws Unfit {
        try {
            URI uri = new URI(text.endsWith("/") ? text : text + "/");
            boolean web = "https".equals(uri.getScheme()) || "http".equals(uri.getScheme());
            boolean plain = uri.getRawQuery() == null && uri.getRawFragment() == null && uri.getRawUserInfo() == null;
            if (web && plain && uri.getHost() != null) {
                return new URI(uri.toASCIIString());
            }
        } catch (URISyntaxException e) {
            // told below, like every other address that leads nowhere
        }
        throw new Unfit(
                Margin.quoted(text) + " is not the address of a folder on the web",
                "write it as a browser shows it, such as https://example.org/nights/");
    }

    static ZoneId zone(String text) throws Unfit {
        try {
            return ZoneId.of(text);
        } catch (DateTimeException e) {
            List<String> known = ZoneId.getAvailableZoneIds().stream().sorted().toList();
            String hint = Nearest.to(text, known)
                    .map(zone -> "did you mean " + Margin.quoted(zone) + "?")
                    .orElse("write continent and city, such as Europe/Rome");
            throw new Unfit("unknown time zone " + Margin.quoted(text), hint);
        }
    }
}
