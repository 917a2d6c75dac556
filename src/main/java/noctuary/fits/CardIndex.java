package noctuary.fits;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks up cards by keyword; the first of several counts. A card that is asked for and contradicts its double, or is no
 * number where one is needed, leaves an oddity.
 */
final class CardIndex {
    /** Relative; below it two values are the same number written twice. */
    private static final double SAME = 1e-4;

    /** What a frame's header measures is far smaller, and what is computed from it stays finite. */
    private static final double LARGEST = 1e30;

    private final Map<String, Card> first = new HashMap<>();
    private final Map<String, Card> contradicting = new HashMap<>();
    private final List<FrameHeader.Oddity> oddities = new ArrayList<>();

    CardIndex(List<Card> cards) {
        for (Card card : cards) {
            Card earlier = first.putIfAbsent(card.keyword(), card);
            if (earlier != null && !says(earlier, card)) {
                contradicting.putIfAbsent(card.keyword(), card);
            }
        }
    }

    private static boolean says(Card one, Card other) {
        double a = Numerals.parse(one.value());
        double b = Numerals.parse(other.value());
        return one.value().strip().equals(other.value().strip())
                || other.isBlank()
                || Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
    }

    List<FrameHeader.Oddity> oddities() {
        return oddities;
    }

    void odd(String keyword, String what, String hint) {
        FrameHeader.Oddity oddity = new FrameHeader.Oddity(keyword, what, hint);
        if (!oddities.contains(oddity)) {
            oddities.add(oddity);
        }
    }

    /** The first card of that name, without any remark. */
    Optional<Card> raw(String keyword) {
        return Optional.ofNullable(first.get(keyword));
    }

    boolean isTrue(String keyword) {
        return raw(keyword).filter(card -> card.value().strip().equals("T")).isPresent();
    }

    /** The first of the keywords that has a value. */
    Optional<Card> find(String... keywords) {
        for (String keyword : keywords) {
            Card card = first.get(keyword);
            if (card != null && !card.isBlank()) {
                noteContradiction(card);
                return Optional.of(card);
            }
        }
        return Optional.empty();
    }

    Optional<Cited<String>> text(String... keywords) {
        return find(keywords).map(card -> new Cited<>(card.value().strip(), card.keyword(), card.value()));
    }

    /** The first of the keywords that holds a number, in quotes or not. */
    Optional<Cited<Double>> number(String... keywords) {
        for (String keyword : keywords) {
            Optional<Card> card = find(keyword);
            double value = card.map(c -> Numerals.parse(c.value())).orElse(Double.NaN);
            if (Math.abs(value) <= LARGEST) {
                return Optional.of(new Cited<>(value, keyword, card.get().value()));
            }
            card.filter(CardIndex::isMeantAsNumber)
                    .ifPresent(c -> odd(keyword, keyword + " = " + c.value() + " is no number", "it is left out"));
        }
        return Optional.empty();
    }

    /** A word such as N/A in quotes is no failed number. */
    private static boolean isMeantAsNumber(Card card) {
        return !card.quoted() || card.value().chars().anyMatch(Character::isDigit);
    }

    /** {@link #number} where 0 or less, or next to nothing, means that nobody knew. */
    Optional<Cited<Double>> positive(String... keywords) {
        return number(keywords).filter(cited -> cited.value() > 1 / LARGEST);
    }

    private void noteContradiction(Card card) {
        Card other = contradicting.get(card.keyword());
        if (other != null) {
            odd(
                    card.keyword(),
                    card.keyword() + " stands twice, as " + card.value() + " and as " + other.value(),
                    "the first is used; correct the header if it is the wrong one");
        }
    }
}
