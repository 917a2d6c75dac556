package noctuary.draw;

/** How much room text takes, estimated without the font: on the safe side for a wide sans serif. */
final class Words {
    private static final String SLIM = "ijlt.,:;'|!()[] f·′″/";
    private static final double SLIMMEST = 0.36;
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
        String all = text.strip();
        int end = most(all, room / (SLIMMEST * fontSize));
        while (end > 0 && width(all.substring(0, end).strip() + "…", fontSize) > room) {
            end = all.offsetByCodePoints(end, -1);
        }
        return all.substring(0, end).strip() + "…";
    }

    /** Where so many code points end at the latest, so that a word of thousands is not measured thousands of times. */
    private static int most(String text, double codePoints) {
        int end = (int) Math.max(0, Math.min(text.length(), 2 * Math.ceil(codePoints)));
        boolean split = end > 0 && end < text.length() && Character.isLowSurrogate(text.charAt(end));
        return split ? end - 1 : end;
    }

    private static double share(int c) {
        if (SLIM.indexOf(c) >= 0) {
            return SLIMMEST;
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
