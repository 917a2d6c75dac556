package noctuary.entry;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word that a mistyped one most likely meant. */
public final class Nearest {
    private static final int LONGEST = 60;

    private Nearest() {}

    /** Empty when no word is near: at most one slip in three letters. */
    static Optional<String> to(String typed, Collection<String> known) {
        String word = plain(typed);
        if (word.isEmpty() || word.length() > LONGEST) {
            return Optional.empty();
        }
        return known.stream()
                .filter(candidate -> !plain(candidate).isEmpty())
                .filter(candidate -> near(word, plain(candidate)))
                .min(Comparator.comparingInt((String candidate) -> distance(word, plain(candidate)))
                        .thenComparing(candidate -> plain(candidate).charAt(0) != word.charAt(0))
                        .thenComparing(candidate -> Math.abs(plain(candidate).length() - word.length()))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** A hint that names the nearest word, else all of them. */
    public static String hint(String typed, Collection<String> known) {
        return to(typed, known)
                .map(word -> "did you mean " + Margin.quoted(word) + "?")
                .orElseGet(() -> known.isEmpty() ? "none is known yet" : "known: " + String.join(", ", known));
    }

    private static boolean near(String word, String candidate) {
        boolean begins = word.length() >= 4 && (candidate.startsWith(word) || word.startsWith(candidate + "s"));
        return begins || distance(word, candidate) <= Math.max(1, Math.min(word.length(), candidate.length()) / 3);
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    }

    /** Optimal string alignment distance: insert, delete, replace, swap of neighbours each cost 1. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, i, j, d);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(String a, String b, int i, int j, int[][] d) {
        int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
