package noctuary.draw;

/** What makes text from outside harmless in XML and HTML. */
final class Markup {
    private Markup() {}

    /**
     * Escaped for element content and quoted attributes; characters that XML 1.0 forbids (production 2) are left out.
     */
    static String text(String raw) {
        StringBuilder out = new StringBuilder(raw.length() + 16);
        raw.codePoints().filter(Markup::allowed).forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    /** An id safe in attributes and in {@code url(#...)}: anything but ASCII letters, digits, - is written as _hex. */
    static String id(String raw) {
        StringBuilder out = new StringBuilder(raw.length());
        raw.codePoints().forEach(c -> {
            if (c == '-' || c < 128 && Character.isLetterOrDigit(c)) {
                out.appendCodePoint(c);
            } else {
                out.append('_').append(Integer.toHexString(c));
            }
        });
        return out.toString();
    }

    /** Whether an address is relative: no scheme, no other host. */
    static boolean staysInside(String href) {
        if (href.isBlank() || href.startsWith("//") || href.indexOf('\\') >= 0) {
            return false;
        }
        int colon = href.indexOf(':');
        int slash = href.indexOf('/');
        return colon < 0 || slash >= 0 && slash < colon;
    }

    private static boolean allowed(int c) {
        boolean whitespace = c == 0x9 || c == 0xA || c == 0xD;
        boolean ordinary = c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
        boolean control = c >= 0x7F && c <= 0x9F;
        return whitespace || ordinary && !control;
    }
}
