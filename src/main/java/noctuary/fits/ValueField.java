package noctuary.fits;

/**
 * The part of a card after {@code =}: a value and a comment (FITS 4.0 sections 4.1.2.3 and 4.2).
 *
 * @param closed false when a quote was opened and never closed; the value is then all that follows it
 */
record ValueField(String value, String comment, boolean quoted, boolean closed) {
    static ValueField parse(String field) {
        String text = field.strip();
        return text.startsWith("'") ? quoted(text) : plain(text);
    }

    private static ValueField plain(String text) {
        int slash = text.indexOf('/');
        if (slash < 0) {
            return new ValueField(text, "", false, true);
        }
        return new ValueField(
                text.substring(0, slash).strip(), text.substring(slash + 1).strip(), false, true);
    }

    private static ValueField quoted(String text) {
        StringBuilder value = new StringBuilder();
        for (int i = 1; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != '\'') {
                value.append(c);
            } else if (i + 1 < text.length() && text.charAt(i + 1) == '\'') {
                value.append(c);
                i++;
            } else {
                String rest = text.substring(i + 1).strip();
                String comment = rest.startsWith("/") ? rest.substring(1).strip() : "";
                return new ValueField(value.toString().stripTrailing(), comment, true, true);
            }
        }
        return new ValueField(value.toString().strip(), "", true, false);
    }
}
