package noctuary.fits;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Turns the 80-character records of a header into cards, leaving out what is beyond repair and saying so. */
final class CardReader {
    static final int CARD = 80;
    private static final int KEYWORD = 8;
    private static final int MOST_NAMED = 4;
    /** Characters of a string that goes on over several cards; nothing that names or describes a frame is longer. */
    private static final int LONGEST = 4_000;

    private static final Pattern PRINTABLE = Pattern.compile("[\\x21-\\x7e]+");

    private final List<Card> cards = new ArrayList<>();
    private final List<String> damaged = new ArrayList<>();
    /** True while the last card is a string that ends in &amp; and may be continued. */
    private boolean open;

    /** The cards of one header, in order. */
    static CardReader read(List<String> records) {
        CardReader reader = new CardReader();
        for (String record : records) {
            reader.add(record);
        }
        return reader;
    }

    List<Card> cards() {
        return cards;
    }

    /** At most one sentence, however many cards are damaged. */
    List<FrameHeader.Oddity> oddities() {
        if (damaged.isEmpty()) {
            return List.of();
        }
        List<String> named = damaged.subList(0, Math.min(MOST_NAMED, damaged.size()));
        String more = damaged.size() > MOST_NAMED ? " and " + (damaged.size() - MOST_NAMED) + " more" : "";
        String what =
                damaged.size() == 1 ? "a header card is damaged: " : damaged.size() + " header cards are damaged: ";
        return List.of(new FrameHeader.Oddity(
                damaged.get(0).split(" ")[0],
                what + String.join(", ", named) + more,
                "the rest of the header is used; nothing to do unless a fact is missing"));
    }

    private void add(String record) {
        String keyword = record.substring(0, KEYWORD).stripTrailing().toUpperCase(Locale.ROOT);
        if (keyword.equals("CONTINUE") && open) {
            lengthen(ValueField.parse(record.substring(KEYWORD)));
            return;
        }
        open = false;
        if (keyword.equals("HIERARCH") && record.indexOf('=') > KEYWORD) {
            addHierarch(record);
        } else if (keyword.equals("HISTORY") || keyword.equals("COMMENT")) {
            String text = record.substring(KEYWORD).stripTrailing();
            cards.add(new Card(keyword, legible(text), "", false));
        } else if (record.charAt(KEYWORD) == '=' && !keyword.isEmpty()) {
            addValue(keyword, record.substring(KEYWORD + 1));
        } else if (keyword.chars().anyMatch(Character::isISOControl)) {
            damaged.add(printable(keyword) + " (control characters)");
        }
    }

    private void addHierarch(String record) {
        int equals = record.indexOf('=');
        String name = record.substring(KEYWORD, equals).strip().replaceAll("\\s+", ".");
        put(name.toUpperCase(Locale.ROOT), ValueField.parse(record.substring(equals + 1)));
    }

    private void addValue(String keyword, String field) {
        if (!PRINTABLE.matcher(keyword).matches()) {
            damaged.add(printable(keyword) + " (not a keyword)");
            return;
        }
        if (!field.startsWith(" ") && !field.isEmpty()) {
            damaged.add(keyword + " (no blank after the equals sign, read all the same)");
        }
        put(keyword, ValueField.parse(field));
    }

    private void put(String keyword, ValueField field) {
        if (!field.closed()) {
            damaged.add(printable(keyword) + " (no closing quote)");
        }
        cards.add(new Card(keyword, legible(field.value()), legible(field.comment()), field.quoted()));
        open = field.quoted() && field.value().endsWith("&");
    }

    private void lengthen(ValueField more) {
        Card last = cards.remove(cards.size() - 1);
        if (last.value().length() + last.comment().length() > LONGEST) {
            damaged.add(last.keyword() + " (continued over too many cards)");
            cards.add(last);
            open = false;
            return;
        }
        String start = last.value().substring(0, last.value().length() - 1);
        String comment = (last.comment() + " " + more.comment()).strip();
        cards.add(new Card(last.keyword(), start + legible(more.value()), legible(comment), true));
        open = more.quoted() && more.value().endsWith("&");
    }

    /** Without control characters, which no text of a header may hold (section 4.2.1) and no page can show. */
    private static String legible(String text) {
        return text.chars().anyMatch(Character::isISOControl)
                ? text.replaceAll("[\\x00-\\x1f\\x7f-\\x9f]", " ").stripTrailing()
                : text;
    }

    private static String printable(String text) {
        return text.replaceAll("[^\\x21-\\x7e]+", "?");
    }
}
