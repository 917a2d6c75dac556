package noctuary.fits;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** IMAGETYP and its dialects to a kind of frame (common practice; no standard reserves these words). */
final class KindCards {
    private static final String[] KEYWORDS = {"IMAGETYP", "FRAME", "OBSTYPE", "DATA-TYP"};

    /** The first word found inside the text decides: a dark flat is a dark, a twilight flat is no light. */
    private static final Map<String, FrameKind> WORDS = words();

    private KindCards() {}

    private static Map<String, FrameKind> words() {
        Map<String, FrameKind> words = new LinkedHashMap<>();
        words.put("dark", FrameKind.DARK);
        words.put("bias", FrameKind.BIAS);
        words.put("zero", FrameKind.BIAS);
        words.put("offset", FrameKind.BIAS);
        words.put("flat", FrameKind.FLAT);
        words.put("twilight", FrameKind.FLAT);
        words.put("light", FrameKind.LIGHT);
        words.put("object", FrameKind.LIGHT);
        words.put("science", FrameKind.LIGHT);
        words.put("comp", FrameKind.OTHER);
        words.put("arc", FrameKind.OTHER);
        words.put("focus", FrameKind.OTHER);
        words.put("test", FrameKind.OTHER);
        return words;
    }

    static FrameKind kind(CardIndex cards) {
        for (String keyword : KEYWORDS) {
            Optional<Card> card = cards.find(keyword);
            Optional<FrameKind> kind = card.flatMap(c -> kind(c.value()));
            if (kind.isPresent()) {
                return kind.get();
            }
            if (card.isPresent() && keyword.equals("IMAGETYP")) {
                cards.odd(
                        keyword,
                        "IMAGETYP = " + card.get().value().strip() + " is no known kind of frame",
                        "light, dark, flat and bias are known");
                return FrameKind.OTHER;
            }
        }
        return FrameKind.UNTOLD;
    }

    private static Optional<FrameKind> kind(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return WORDS.entrySet().stream()
                .filter(word -> lower.contains(word.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
