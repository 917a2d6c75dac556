package noctuary.entry;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Names given out so that no two differ by case only: the second of a kind gets {@code -2}. */
final class UniqueNames {
    private final Map<String, Integer> given = new HashMap<>();

    String next(String name) {
        String free = name;
        Integer times = given.get(name.toLowerCase(Locale.ROOT));
        for (int n = times == null ? 1 : times + 1; given.containsKey(free.toLowerCase(Locale.ROOT)); n++) {
            free = numbered(name, Math.max(2, n));
            given.put(name.toLowerCase(Locale.ROOT), Math.max(2, n));
        }
        given.putIfAbsent(free.toLowerCase(Locale.ROOT), 1);
        return free;
    }

    private static String numbered(String name, int n) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) + "-" + n + name.substring(dot) : name + "-" + n;
    }
}
