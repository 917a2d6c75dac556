package noctuary.draw;

/** How much room text takes, estimated without the font: on the safe side for a wide sans serif. */
final class Words {
    private static final String SLIM = "ijlt.,:;'|!()[] f·′″/";
    private static final String BROAD = "mwMWÆŒ%@—";

    private Words() {}

    static double width(String text, double fontSize) {
        return fontSize * text.codePoints().mapToDouble(Words::share).sum();
    }

    /** The text, or its beginning with an ellipsis where it would be wider than {@code room}. */
    static String within(String text, double room, double fontSize) {
        if (width(text, fontSize) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end).strip() + "…", fontSize) > room) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).strip() + "…";
    }

    private static double share(int c) {
        if (SLIM.indexOf(c) >= 0) {
            return 0.36;
        }
        if (BROAD.indexOf(c) >= 0) {
            return 0.95;
        }
        if (Character.isUpperCase(c) || Character.isDigit(c)) {
            return 0.66;
        }
        return c >= 0x2E80 ? 1.0 : 0.61;
    }
}
