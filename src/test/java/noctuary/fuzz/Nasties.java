package noctuary.fuzz;

import java.util.List;
import java.util.Random;

/** Words and numbers that are well formed where they stand, and meant for what comes after: pages, charts, downloads. */
final class Nasties {
    private static final List<String> WORDS = List.of(
            "<script>alert(1)</script>",
            "</script><script>alert(1)//",
            "\"><img src=x onerror=alert(1)>",
            "' onmouseover='alert(1)",
            "<svg onload=alert(1)>",
            "</title></style></textarea></svg><b>",
            "<!--",
            "-->",
            "]]>",
            "&lt;script&gt;",
            "&#x3C;b&#x3E; &amp;amp; &",
            "javascript:alert(1)",
            "data:text/html,<script>alert(1)</script>",
            "url(javascript:alert(1))",
            "${page.head.title}",
            "#{1}",
            "<#include \"/etc/passwd\">",
            "<@x/>",
            "[=page]",
            "=1+1",
            "@SUM(A1)",
            "a,b;c\td",
            "\"quoted\" 'words'",
            "two\nlines\r\nor three",
            "\u0000\u0001\u0007\u001b[31mred\u001b[0m\u007f\u0085\u009f",
            "\u202Eright to left\u202C\u2066\u2069",
            "\u200B\u200D\uFEFF\u00AD",
            "\uFFFE\uFFFF",
            "\uD800 alone \uDC00",
            "\uDBFF\uDFFF \uD83D\uDD2D",
            "\u2028\u2029",
            "e" + "\u0301".repeat(300),
            "\u05D0\u0627\u0E01\u6F22\uAC00",
            "a".repeat(3_900),
            "word ".repeat(700),
            "\u00DF".repeat(1_500),
            "../../../etc/passwd",
            "C:\\Users\\x",
            "%00%2e%2e%2f",
            "CON",
            ".",
            "..",
            "-",
            "0",
            "null",
            "NaN",
            "1e308",
            "\\u0041\\x41\\",
            "`a` *b* [c](d) ![e](f) | g",
            "{a: b}",
            "[x]",
            "M 31");

    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "1",
            "0.1",
            "-1",
            "359.999999999999999",
            "90",
            "1e15",
            "1e99",
            "-1e99",
            "1e-99",
            "4.9e-32",
            "123456789012345678901234567890",
            "0.000000000000000000000000001",
            "1e308",
            "NaN",
            ".inf",
            "Infinity",
            "1_000",
            "0x1F",
            "007",
            "12:30",
            "9".repeat(400));

    private static final List<String> DATES = List.of(
            "0001-01-01",
            "1582-10-10",
            "1969-12-31",
            "2024-02-29",
            "2025-06-14",
            "2025-06-15",
            "2026-02-13",
            "9999-12-31");

    private final Random random;

    Nasties(Random random) {
        this.random = random;
    }

    /** One in three is harmless, so that the others get somewhere. */
    String word() {
        return random.nextInt(3) == 0 ? "plain " + random.nextInt(4) : WORDS.get(random.nextInt(WORDS.size()));
    }

    /** Of two, which no pool holds. */
    String words() {
        return random.nextInt(4) == 0 ? word() + word() : word();
    }

    String number() {
        return NUMBERS.get(random.nextInt(random.nextInt(3) == 0 ? NUMBERS.size() : 8));
    }

    String date() {
        return DATES.get(random.nextInt(DATES.size()));
    }

    /** As a scalar of YAML that holds just this text. */
    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ' || c > '~') {
                quoted.append(String.format(java.util.Locale.ROOT, "\\u%04X", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }
}
