package noctuary.entry;

import java.util.ArrayList;
import java.util.List;

/**
 * One step of a path with {@code *}, {@code ?}, {@code [abc]}, {@code [!a-c]} and {@code {one,two}}. Matching takes at
 * most pattern length times name length steps for each alternative.
 */
final class Glob {
    private static final int MOST_ALTERNATIVES = 64;

    private final List<String> alternatives = new ArrayList<>();

    private Glob() {}

    static Glob of(String pattern) throws Unfit {
        var glob = new Glob();
        glob.expand(pattern);
        return glob;
    }

    static boolean isPattern(String step) {
        return step.chars().anyMatch(c -> "*?[{".indexOf(c) >= 0);
    }

    boolean matches(String name) {
        return alternatives.stream().anyMatch(pattern -> matches(pattern, name));
    }

    private void expand(String pattern) throws Unfit {
        int open = pattern.indexOf('{');
        int close = pattern.indexOf('}', open);
        if (open < 0 || close < 0) {
            alternatives.add(pattern);
        } else {
            for (String word : pattern.substring(open + 1, close).split(",", -1)) {
                expand(pattern.substring(0, open) + word + pattern.substring(close + 1));
            }
        }
        if (alternatives.size() > MOST_ALTERNATIVES) {
            throw new Unfit("too many alternatives in { }", "use * instead");
        }
    }

    /** Greedy, going back to the last star only. */
    private static boolean matches(String pattern, String name) {
        int p = 0;
        int n = 0;
        int star = -1;
        int restart = 0;
        while (n < name.length()) {
            if (p < pattern.length() && pattern.charAt(p) == '*') {
                star = p++;
                restart = n;
            } else if (p < pattern.length() && one(pattern, p, name.charAt(n))) {
                p = after(pattern, p);
                n++;
            } else if (star >= 0) {
                p = star + 1;
                n = ++restart;
            } else {
                return false;
            }
        }
        while (p < pattern.length() && pattern.charAt(p) == '*') {
            p++;
        }
        return p == pattern.length();
    }

    private static int after(String pattern, int p) {
        int close = pattern.charAt(p) == '[' ? pattern.indexOf(']', p + 2) : -1;
        return close < 0 ? p + 1 : close + 1;
    }

    private static boolean one(String pattern, int p, char c) {
        int end = after(pattern, p);
        if (end == p + 1) {
            return pattern.charAt(p) == '?' || pattern.charAt(p) == c;
        }
        boolean not = pattern.charAt(p + 1) == '!';
        String set = pattern.substring(p + (not ? 2 : 1), end - 1);
        boolean in = false;
        for (int i = 0; i < set.length(); i++) {
            boolean range = i + 2 < set.length() && set.charAt(i + 1) == '-';
            in |= range ? set.charAt(i) <= c && c <= set.charAt(i + 2) : set.charAt(i) == c;
            i += range ? 2 : 0;
        }
        return in != not;
    }
}
